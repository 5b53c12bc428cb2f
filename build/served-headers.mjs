/**
 * What a server has to say with every file, so that pages of Excel, which come from another site, may
 * read functions.json and show the icons. The files are public and hold nothing of a user's.
 */
export const FOR_OTHER_SITES = { "Access-Control-Allow-Origin": "*" };

/** A browser asks each time whether a file has changed, so that a new version is there at once. */
export const ALWAYS_NEWEST = { "Cache-Control": "no-cache" };
