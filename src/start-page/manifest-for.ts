/** Where the manifest in the repository says that the add-in is served. */
export const LOCAL_ORIGIN = "https://localhost:3000";

/**
 * The manifest with another address. The domain that the add-in may open has no folder.
 *
 * @param manifest The manifest for `LOCAL_ORIGIN`.
 * @param address The https address of the server or of a folder on it, without a slash at its end.
 */
export function manifestFor(manifest: string, address: string): string {
  const domain = (at: string) => `<AppDomain>${at}</AppDomain>`;
  return manifest
    .replaceAll(domain(LOCAL_ORIGIN), domain(new URL(address).origin))
    .replaceAll(`${LOCAL_ORIGIN}/`, `${address.replaceAll("&", "&amp;")}/`);
}

/** The address of the add-in to which a page of it belongs: "https://example.org/fresh". */
export function addressOfPage(page: string): string {
  const { origin, pathname } = new URL(page);
  return origin + pathname.replace(/\/[^/]*$/, "");
}
