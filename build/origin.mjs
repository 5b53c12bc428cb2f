/** Where the manifest in the repository says that the add-in is served. */
export const LOCAL_ORIGIN = "https://localhost:3000";

/**
 * The origin to put into the manifest of a build.
 *
 * @param {unknown} given What follows `--env origin=`; nothing for a local build.
 */
export function originFrom(given) {
  if (given === undefined) return LOCAL_ORIGIN;
  const url = typeof given === "string" && URL.canParse(given) ? new URL(given) : undefined;
  if (url?.protocol !== "https:" || url.pathname !== "/" || url.search || url.hash)
    throw new Error(
      `The origin "${given}" cannot be used. Give the https address without a path, such as --env origin=https://example.org`,
    );
  return url.origin;
}

/** The manifest with another origin. */
export function manifestFor(manifest, origin) {
  return manifest.toString().replaceAll(LOCAL_ORIGIN, origin);
}
