/**
 * What a server has to say with every file, so that pages of Excel, which come from another site, may
 * read functions.json and show the icons. The files are public and hold nothing of a user's.
 */
export const FOR_OTHER_SITES = { "Access-Control-Allow-Origin": "*" };

/**
 * Long enough for Excel, which wants to keep the icons, and short enough for a new version to be seen
 * within ten minutes.
 */
export const KEPT_SHORTLY = { "Cache-Control": "max-age=600" };
