import { needsOf, type HostAnswers, type HostNeed } from "../../src/start-page/host-check";

const READY: HostAnswers = {
  address: "https://example.org/fresh",
  functionsForOthers: "read",
  iconForOthers: true,
  pane: { "cache-control": "max-age=600" },
  script: { "content-type": "text/javascript; charset=utf-8" },
};

const missing = (answers: Partial<HostAnswers>) =>
  needsOf({ ...READY, ...answers })
    .filter(({ met }) => !met)
    .map(({ id }) => id);

// Sources: the vendor's pages on add-ins (https, shown in a frame) from memory; Fetch standard; RFC
// 7034 (X-Frame-Options); CSP level 3 (frame-ancestors); RFC 9111 (Cache-Control); RFC 9239 (types).
test.each<[what: string, answers: Partial<HostAnswers>, missing: HostNeed["id"][]]>([
  ["nothing", {}, []],
  ["a host without https", { address: "http://example.org" }, ["need-https"]],
  ["no reading across sites", { functionsForOthers: "refused" }, ["need-functions-for-others"]],
  [
    "a page in place of the metadata",
    { functionsForOthers: "not metadata" },
    ["need-functions-are-metadata"],
  ],
  ["icons for its own pages only", { iconForOthers: false }, ["need-icons-for-others"]],
  [
    "scripts sent as plain text",
    { script: { "content-type": "text/plain" } },
    ["need-script-type"],
  ],
  ["scripts sent without a type", { script: {} }, ["need-script-type"]],
  ["X-Frame-Options", { pane: { "x-frame-options": "SAMEORIGIN" } }, ["need-frame"]],
  [
    "frame-ancestors",
    { pane: { "content-security-policy": "frame-ancestors 'self'; default-src *" } },
    ["need-frame"],
  ],
  ["frame-ancestors *", { pane: { "content-security-policy": "frame-ancestors *" } }, []],
  ["pages kept for a day", { pane: { "cache-control": "public, max-age=86400" } }, ["need-newest"]],
  ["pages kept for ever", { pane: { "cache-control": "immutable" } }, ["need-newest"]],
  ["pages asked for each time", { pane: { "cache-control": "max-age=86400, no-cache" } }, []],
])("%s", (_, answers, expected) => {
  expect(missing(answers)).toEqual(expected);
});
