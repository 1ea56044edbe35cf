/**
 * All that runs in a page: it reads a figure's values with the pointer and with a slider under the figure, shows one panel of
 * a chooser at a time, and copies tables. A constant, so that the page's security policy can name it by its hash; without it
 * the page shows every panel.
 */
export const PAGE_SCRIPT: string = `(() => {
const root = document.documentElement;
root.classList.add("live");
const all = (from, selector) => Array.from(from.querySelectorAll(selector));
const choosers = () => all(document, ".chooser").forEach((chooser) => {
  const select = chooser.querySelector("select");
  const panels = Array.from(chooser.children).filter((child) => child.classList.contains("panel"));
  const show = () => panels.forEach((panel, i) => panel.classList.toggle("shown", i === select.selectedIndex));
  select.addEventListener("change", show);
  show();
});
const readers = () => all(document, ".drawing").forEach((drawing) => {
  const marks = all(drawing, ".mark[data-read]");
  if (marks.length === 0) return;
  const title = drawing.querySelector("title");
  const slider = document.createElement("input");
  Object.assign(slider, { type: "range", min: "0", max: String(marks.length - 1), step: "1", value: "0", className: "reader" });
  slider.setAttribute("aria-label", "Values of the figure: " + (title ? title.textContent : ""));
  const words = document.createElement("p");
  words.className = "readout";
  words.setAttribute("aria-hidden", "true");
  let last = null;
  const read = (i) => {
    if (last) last.classList.remove("read");
    last = marks[i];
    last.classList.add("read");
    slider.value = String(i);
    const text = last.getAttribute("data-read");
    slider.setAttribute("aria-valuetext", text);
    words.textContent = text;
  };
  slider.setAttribute("aria-valuetext", marks[0].getAttribute("data-read"));
  slider.addEventListener("input", () => read(Number(slider.value)));
  slider.addEventListener("focus", () => read(Number(slider.value)));
  drawing.addEventListener("pointerover", (event) => {
    const mark = event.target.closest(".mark[data-read]");
    if (mark) read(marks.indexOf(mark));
  });
  drawing.append(slider, words);
});
const copiers = () => all(document, "button.copy").forEach((button) => {
  const area = button.parentElement.querySelector("textarea");
  const name = button.textContent;
  const said = (text) => { button.textContent = text; setTimeout(() => { button.textContent = name; }, 4000); };
  button.addEventListener("click", async () => {
    area.select();
    try { await navigator.clipboard.writeText(area.value); said("Copied"); }
    catch { said("Selected: copy with Ctrl+C"); }
  });
});
document.addEventListener("DOMContentLoaded", () => { choosers(); readers(); copiers(); });
})();`;

/** SHA-256 of the script's UTF-8 bytes in base64, as a content security policy writes it. */
export const PAGE_SCRIPT_HASH: string = "sha256-WEgwDZPRx3SZfNezKmmfEs/EIZA/XF0OlTOz7PfcWUs=";
