import { findingSentence } from "../../fieldsheet/finding-sentence";
import type { CheckResult } from "../../fieldsheet/check-result";
import type { TestResult } from "../../fieldsheet/test-result";
import type { Finding } from "../../fieldsheet/finding";
import { say } from "../../messages/pane-catalogue";
import { badge } from "../kit/badge";
import { element } from "../kit/element";

/**
 * That a test is void or incomplete, large, and why; then whatever else was found in it. A valid test
 * shows its result instead, and what was found stands before it, so that nobody accepts without it.
 */
export function testStateView(row: TestResult, { columns }: CheckResult): HTMLElement | undefined {
  const { state, findings } = row;
  const weighs = state === "void" ? "void" : state === "incomplete" ? "error" : undefined;
  const reasons = findings.filter(({ weight }) => weight === weighs);
  const others = findings.filter(({ weight }) => weight !== weighs);
  if (!weighs && others.length === 0) return undefined;
  const sentence = (finding: Finding) => findingSentence(finding, columns);
  const found = [
    element("p", { class: "hint" }, say("test-found")),
    element(
      "ul",
      { class: "test-found" },
      ...others.map((finding) => element("li", {}, badge(finding.weight), " ", sentence(finding))),
    ),
  ];
  if (!weighs) return element("div", {}, ...found);
  return element(
    "div",
    {},
    element(
      "div",
      { class: "test-state" },
      element("p", { class: "air" }, badge(weighs === "void" ? "void" : "incomplete")),
      element("ul", {}, ...reasons.map((finding) => element("li", {}, sentence(finding)))),
    ),
    ...(others.length > 0 ? found : []),
    element("p", { class: "hint" }, say(weighs === "void" ? "test-is-void" : "test-is-incomplete")),
  );
}
