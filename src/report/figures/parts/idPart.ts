/** Makes a text from a file fit to stand in an id, which holds no spaces. */
export function idPart(text: string): string {
  return text.replace(/[^\w-]+/g, "-");
}
