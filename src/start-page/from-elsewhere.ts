/**
 * Runs in a frame that belongs to no site. What it asks of its own host is therefore asked across
 * sites, as the pages of Excel ask.
 */
import type { AnswersForOthers } from "./ask-host";

async function functionsForOthers(): Promise<AnswersForOthers["functionsForOthers"]> {
  const response = await fetch("functions.json", { cache: "no-store" }).catch(() => undefined);
  if (!response?.ok) return "refused";
  const metadata: unknown = await response.json().catch(() => undefined);
  const found = typeof metadata === "object" && metadata !== null && "functions" in metadata;
  return found ? "read" : "not metadata";
}

function iconForOthers(): Promise<boolean> {
  return new Promise((resolve) => {
    const picture = new Image();
    picture.onload = () => resolve(true);
    picture.onerror = () => resolve(false);
    picture.src = "assets/icon-32.png";
  });
}

async function answer(): Promise<void> {
  const [functions, icon] = await Promise.all([functionsForOthers(), iconForOthers()]);
  const answers: AnswersForOthers = { functionsForOthers: functions, iconForOthers: icon };
  parent.postMessage(answers, "*");
}

void answer();
