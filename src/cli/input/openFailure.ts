/** What the system says when a path cannot be used, in words. */
const REASONS: Readonly<Record<string, string>> = {
  ENOENT: "there is no such file or folder",
  EISDIR: "it is a folder; a file is needed",
  EEXIST: "a file of that name is in the way",
  ENOTDIR: "a part of the path is a file, no folder",
  EACCES: "this user may not open it",
  ENOTFILE: "it is no regular file; a file on a disk is needed",
  EPERM: "this user may not change it",
  EROFS: "the disk can only be read",
  ENOSPC: "the disk is full",
  ELOOP: "it links to itself",
  EIO: "the device failed",
  ENAMETOOLONG: "the name is too long",
  ERR_STRING_TOO_LONG: "it is too large to be read as text",
  ERR_FS_FILE_TOO_LARGE: "it is too large to be read",
};

/** Says why a path cannot be opened; the system's own words where they are not known here. */
export function openFailure(caught: unknown): string {
  const code = (caught as { code?: unknown } | null)?.code;
  const known = typeof code === "string" ? REASONS[code] : undefined;
  return known ?? (caught instanceof Error ? caught.message : String(caught));
}
