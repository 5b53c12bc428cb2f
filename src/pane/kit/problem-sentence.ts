import { Problem } from "../../measure/problem";
import { say, sentenceOf } from "../../messages/pane-catalogue";

/** The sentence for whatever went wrong. A text that is not ours is never shown. */
export function problemSentence(error: unknown): string {
  return error instanceof Problem
    ? sentenceOf(error.id, error.values, error.place)
    : say("pane-unexpected");
}
