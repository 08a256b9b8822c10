// Owns the list of the files of a folder.

import { readdirSync } from "node:fs";
import { join, relative, sep } from "node:path";

/** Every file in a folder and the folders in it, by its path from there with "/", in order. */
export function filesIn(folder) {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    // Older versions of Node have `path`, later ones have `parentPath`.
    .map((entry) => relative(folder, join(entry.parentPath ?? entry.path, entry.name)).split(sep).join("/"))
    .sort();
}
