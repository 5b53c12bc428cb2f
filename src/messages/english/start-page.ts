import type { Words } from "../sentence";

/** Sentences of the page with which a copy of the add-in on a server begins. */
export const startPageMessages = {
  "manifest-needs-https":
    "Excel loads add-ins from https addresses only, and this page was opened from another. Put the files on an https host and open this page there: it then makes the manifest for that address.",
  "host-is-ready": "This host answers Excel as it has to.",
  "host-lacks": ({ missing }: Words<"missing">) =>
    `This host lacks something that Excel needs; what is missing: ${missing}. See below.`,
  "host-not-asked":
    "The host could not be asked. Check that every file of the add-in is there, then load this page again.",
  "is-there": "Yes.",
  "is-missing": "Missing.",
  "need-https": {
    what: "The address begins with https.",
    mend: "Turn https on at the host, then open this page by its https address.",
  },
  "need-functions-for-others": {
    what: "Pages of other sites, those of Excel among them, may read functions.json.",
    mend: "Let the host send the header Access-Control-Allow-Origin: * with it; without that Excel on the web knows none of the functions.",
  },
  "need-functions-are-metadata": {
    what: "functions.json holds the list of functions.",
    mend: "The host answers with something else; put all files there again, unchanged.",
  },
  "need-icons-for-others": {
    what: "Pages of other sites may show the icons.",
    mend: "Let the host send Cross-Origin-Resource-Policy: cross-origin, or not that header, with the folder assets.",
  },
  "need-script-type": {
    what: "functions.js is sent as JavaScript.",
    mend: "Let the host send Content-Type: text/javascript with files that end in .js.",
  },
  "need-frame": {
    what: "taskpane.html may be shown inside a page of another site, as Excel on the web shows it.",
    mend: "Let the host leave out X-Frame-Options, and frame-ancestors in Content-Security-Policy.",
  },
  "need-newest": {
    what: "Browsers ask for a new version of the pages.",
    mend: "The host lets browsers keep pages for more than an hour, so that a new version comes late. Let it send Cache-Control: max-age=600.",
  },
} as const;
