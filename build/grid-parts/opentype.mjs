/** Stands in for `opentype.js`, which reads font files: the workbench offers the browser's fonts only. */
export function parse() {
  throw new Error("The workbench reads no font files.");
}
