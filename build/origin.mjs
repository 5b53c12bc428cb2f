/** Where the manifest in the repository says that the add-in is served. */
export const LOCAL_ORIGIN = "https://localhost:3000";

/**
 * The address to put into the manifest of a build, without a slash at its end.
 *
 * @param {unknown} given What follows `--env origin=`, with the folder on the server if there is one;
 *   nothing for a local build.
 */
export function addressFrom(given) {
  if (given === undefined) return LOCAL_ORIGIN;
  const url = typeof given === "string" && URL.canParse(given) ? new URL(given) : undefined;
  if (url?.protocol !== "https:" || url.search || url.hash)
    throw new Error(
      `The origin "${given}" cannot be used. Give the https address of the server or of a folder on it, such as --env origin=https://example.org`,
    );
  return url.origin + url.pathname.replace(/\/+$/, "");
}

/** The manifest with another address. The domain that the add-in may open has no folder. */
export function manifestFor(manifest, address) {
  const domain = (at) => `<AppDomain>${at}</AppDomain>`;
  return manifest
    .toString()
    .replaceAll(domain(LOCAL_ORIGIN), domain(new URL(address).origin))
    .replaceAll(`${LOCAL_ORIGIN}/`, `${address.replaceAll("&", "&amp;")}/`);
}
