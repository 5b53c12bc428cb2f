import type { HostAnswers } from "./host-check";

/** What the page in the sandbox tells: it belongs to no site, so all it asks for is of another. */
export interface AnswersForOthers {
  readonly functionsForOthers: HostAnswers["functionsForOthers"];
  readonly iconForOthers: boolean;
}

const REFUSED: AnswersForOthers = { functionsForOthers: "refused", iconForOthers: false };
const LONGEST_WAIT = 10_000;

/** Asks the host for the files that Excel asks for, as Excel does. */
export async function askHost(address: string): Promise<HostAnswers> {
  const [forOthers, pane, script] = await Promise.all([
    askFromElsewhere(),
    headersOf("taskpane.html"),
    headersOf("functions.js"),
  ]);
  return { address, ...forOthers, pane, script };
}

async function headersOf(file: string): Promise<Record<string, string>> {
  const { headers } = await fetch(file, { cache: "no-store" });
  return Object.fromEntries([...headers].map(([name, value]) => [name.toLowerCase(), value]));
}

/** A frame whose script may not come from its own site says nothing: that is an answer, too. */
function askFromElsewhere(): Promise<AnswersForOthers> {
  const frame = document.createElement("iframe");
  frame.setAttribute("sandbox", "allow-scripts");
  frame.hidden = true;
  frame.src = "from-elsewhere.html";
  return new Promise<AnswersForOthers>((resolve) => {
    const answered = ({ source, data }: MessageEvent<AnswersForOthers>) => {
      if (source === frame.contentWindow) done(data);
    };
    const timer = setTimeout(() => done(REFUSED), LONGEST_WAIT);
    const done = (answers: AnswersForOthers) => {
      clearTimeout(timer);
      removeEventListener("message", answered);
      frame.remove();
      resolve(answers);
    };
    addEventListener("message", answered);
    document.body.append(frame);
  });
}
