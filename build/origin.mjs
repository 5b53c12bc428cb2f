/**
 * The address to put into the manifest of a build, without a slash at its end.
 *
 * @param {unknown} given What follows `--env origin=`, with the folder on the server if there is one;
 *   nothing for a local build.
 */
export function addressFrom(given) {
  if (given === undefined) return undefined;
  const url = typeof given === "string" && URL.canParse(given) ? new URL(given) : undefined;
  if (url?.protocol !== "https:" || url.search || url.hash)
    throw new Error(
      `The origin "${given}" cannot be used. Give the https address of the server or of a folder on it, such as --env origin=https://example.org`,
    );
  return url.origin + url.pathname.replace(/\/+$/, "");
}
