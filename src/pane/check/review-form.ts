import type { Finding } from "../../fieldsheet/finding";
import { ruleName } from "../kit/rule-name";
import { say } from "../../messages/pane-catalogue";
import { choice } from "../kit/choice";
import { button, element } from "../kit/element";
import type { CheckedArea } from "../state/checked-area";
import type { PaneCommands } from "../state/commands";
import type { PaneState, PaneStore } from "../state/pane-state";
import { reviewOf } from "../state/review/review-of";
import { sentenceOfFinding } from "../state/sentence-of-finding";
import { whereOf } from "../state/where-of";
import { REVIEW_SHEET } from "../../review/review-entry";

/** A reason fits into one cell, with room to spare. */
const LONGEST_REASON = 1000;

/** Decides the chosen finding, or all open ones of its rule: accepted for a reason, or left open. */
export function reviewForm(store: PaneStore, commands: PaneCommands): HTMLElement {
  const hint = element("p", { class: "hint" }, say("review-choose"));
  const about = element("p", { class: "finding-sentence" });
  const meant = choice<"one" | "all">(say("review-for"), () => {});
  const reason = element("textarea", { rows: 2, maxlength: LONGEST_REASON });
  const initials = element("input", { type: "text", autocomplete: "off", maxlength: 20 });
  initials.addEventListener("input", () => store.set({ initials: initials.value }));
  const decide = async (decision: "accepted" | "open") => {
    const findings = findingsMeant(store.get(), meant.value());
    await commands.decide(findings, decision, reason.value);
    // What went wrong is said, and the reason stays to be used.
    if (store.get().error === "") reason.value = "";
  };
  const form = element(
    "form",
    { class: "review-form" },
    about,
    meant.view,
    element("label", { class: "input wide" }, element("span", {}, say("review-reason")), reason),
    element("label", { class: "input" }, element("span", {}, say("review-initials")), initials),
    element(
      "div",
      { class: "actions" },
      element("button", { type: "submit" }, say("review-accept")),
      button(say("review-leave-open"), () => void decide("open")),
    ),
    element("p", { class: "hint" }, say("review-where-kept", { sheet: REVIEW_SHEET })),
  );
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    void decide("accepted");
  });
  let before: Finding | undefined;
  const show = () => {
    const { checked, chosen } = store.get();
    // All is what somebody means once, not from then on.
    if (chosen !== before) meant.offer([]);
    before = chosen;
    hint.hidden = chosen !== undefined;
    form.hidden = chosen === undefined;
    if (!checked || !chosen) return;
    about.textContent = aboutSentence(chosen, checked);
    const alike = findingsMeant(store.get(), "all").length;
    const rule = ruleName(chosen.rule);
    meant.view.hidden = alike < 2;
    meant.offer([
      ["one", say("review-for-one")],
      ...(alike < 2
        ? []
        : [["all", say("review-for-all", { count: alike, rule })] as ["all", string]]),
    ]);
  };
  for (const part of ["checked", "chosen", "review", "shown"] as const)
    store.watch((state) => state[part], show);
  return element("div", {}, hint, form);
}

function aboutSentence(finding: Finding, checked: CheckedArea): string {
  const sentence = sentenceOfFinding({ ...finding, causes: [] }, checked);
  return say("review-of", { place: whereOf(finding, checked), sentence });
}

/** The chosen finding, or every open one of its rule whose weight is listed. */
function findingsMeant({ checked, review, chosen, shown }: PaneState, meant: "one" | "all") {
  if (!checked || !chosen) return [];
  if (meant === "one") return [chosen];
  const { of } = reviewOf(checked, review);
  return checked.result.findings.filter(
    (finding) =>
      finding.rule === chosen.rule && shown.has(finding.weight) && of(finding).decision === "open",
  );
}
