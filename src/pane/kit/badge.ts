import type { Verdict } from "../../acceptance/limits";
import type { TestState } from "../../fieldsheet/judged-test";
import type { Weight } from "../../fieldsheet/finding";
import { say } from "../../messages/pane-catalogue";
import { element } from "./element";

/** What a badge can stand for. */
export type BadgeKind = Weight | Verdict | Exclude<TestState, "" | "void">;

/** A word with a shape and a colour of its own: colour alone never tells anything. */
export function badge(kind: BadgeKind, word: string = badgeWord(kind)): HTMLElement {
  return element("span", { class: `badge ${kind}` }, shape(kind), word);
}

/** The shape alone, for where the word stands beside it. */
export function shape(kind: BadgeKind): HTMLElement {
  return element("span", { class: `shape ${kind}`, "aria-hidden": "true" });
}

/** The word for a weight, a state or a verdict. */
export function badgeWord(kind: BadgeKind): string {
  return say(`word-${kind}`);
}
