import type { startPageMessages } from "../messages/english/start-page";

/** What the host answered when it was asked as Excel asks. */
export interface HostAnswers {
  /** The address of the page. */
  readonly address: string;
  /** Whether a page of another site could read functions.json, and what it found. */
  readonly functionsForOthers: "read" | "refused" | "not metadata";
  /** Whether a page of another site could show an icon. */
  readonly iconForOthers: boolean;
  /** The headers of taskpane.html, by small names. */
  readonly pane: Readonly<Record<string, string>>;
  /** The headers of functions.js, by small names. */
  readonly script: Readonly<Record<string, string>>;
}

/** One thing that Excel needs of the host. */
export interface HostNeed {
  readonly id: keyof typeof startPageMessages & `need-${string}`;
  readonly met: boolean;
}

const FRAME_REFUSED = /frame-ancestors\s+(?!\*)/;

/**
 * What Excel needs of a host, and whether it is there.
 *
 * Sources: the vendor's pages on add-ins (https; pages shown in a frame), the Fetch standard (reading
 * across sites, Cross-Origin-Resource-Policy) and RFC 7034 (X-Frame-Options).
 */
export function needsOf(answers: HostAnswers): HostNeed[] {
  const { address, functionsForOthers, iconForOthers, pane, script } = answers;
  const framed =
    pane["x-frame-options"] === undefined &&
    !FRAME_REFUSED.test(pane["content-security-policy"] ?? "");
  return [
    { id: "need-https", met: address.startsWith("https://") },
    { id: "need-functions-for-others", met: functionsForOthers !== "refused" },
    { id: "need-functions-are-metadata", met: functionsForOthers !== "not metadata" },
    { id: "need-icons-for-others", met: iconForOthers },
    { id: "need-script-type", met: /javascript/.test(script["content-type"] ?? "") },
    { id: "need-frame", met: framed },
    { id: "need-newest", met: !keptLong(pane["cache-control"]) },
  ];
}

/** A page that browsers keep longer than an hour would hide a new version. */
function keptLong(cacheControl = ""): boolean {
  if (/immutable/.test(cacheControl)) return true;
  const seconds = Number(/max-age=(\d+)/.exec(cacheControl)?.[1] ?? 0);
  return seconds > 3600 && !/no-cache|no-store/.test(cacheControl);
}
