import { Problem } from "../../measure/problem";
import { say } from "../../messages/catalogue";

/** The sentence for whatever went wrong. A text that is not ours is never shown. */
export function problemSentence(error: unknown): string {
  return error instanceof Problem ? say(error.id, error.values) : say("pane-unexpected");
}
