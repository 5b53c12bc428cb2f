import { findingSentence } from "../../fieldsheet/finding-sentence";
import type { CheckResult, RowResult } from "../../fieldsheet/check-result";
import { say } from "../../messages/pane-catalogue";
import { badge } from "../kit/badge";
import { element } from "../kit/element";

/** That a test is void or incomplete, large, and why. A valid test shows its result instead. */
export function testStateView(row: RowResult, { columns }: CheckResult): HTMLElement | undefined {
  const { test, findings } = row;
  if (test !== "void" && test !== "incomplete") return undefined;
  const weighs = test === "void" ? "void" : "error";
  const reasons = findings.filter(({ weight }) => weight === weighs);
  return element(
    "div",
    { class: "test-state" },
    element("p", { class: "air" }, badge(test)),
    element(
      "ul",
      {},
      ...reasons.map((finding) => element("li", {}, findingSentence(finding, columns))),
    ),
    element("p", { class: "hint" }, say(test === "void" ? "test-is-void" : "test-is-incomplete")),
  );
}
