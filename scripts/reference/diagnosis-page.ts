import { LIKELIHOOD } from "../../src/fieldsheet/diagnosis/likelihood";
import { slipMessages } from "../../src/messages/english/slips";
import type { Score } from "../../tests/simulation/measure-diagnosis";
import { page, sentence, table } from "./markdown";

/** The page about the slips behind a wrong result: what each is, how they are ordered, how well it works. */
export function diagnosisPage(scores: readonly Score[]): string {
  return page(
    "# The slip behind a wrong result",
    "Where a reported air content is not what the record gives, the check tries every slip that it knows on the row and names each one that leads to exactly the reported number, the likelier first. Each is a finding of its own, with the slip's id as its rule and the weight error. Where none does, it says `unexplained`.",
    "## The slips",
    table(
      ["slip", "what is said"],
      Object.entries(slipMessages).map(([id, template]) => [`\`${id}\``, sentence(template)]),
    ),
    "`half-rounded-up` and `left-unrounded` are two more sentences of `rounded-to-other-step`.",
    "## Which is the likelier",
    "The first entry that holds for a row counts. What the sheet itself shows goes first; then, the rarer the rows in which a slip can happen at all, the higher it stands. A slip that can happen in every row fits many numbers by chance. The order is our own judgement, set with the simulated records below in view.",
    table(
      ["", "slip", "when", "because"],
      LIKELIHOOD.map(({ slip, when, because }, i) => [
        String(i + 1),
        `\`${slip}\``,
        when?.is ?? "always",
        because,
      ]),
    ),
    "## How well it works",
    "Simulated records with one slip each, from an implementation of the method that shares nothing with the one in `src` (`tests/simulation`). A third of the sheets measure alcohol in pints, a third in ounces and a third in litres; half record the final reading beside the others; in half of the tests the second reading differs from the first, and 15 of 100 need cups. `npm run diagnosis` prints this table.",
    table(
      ["slip", "records", "named first", "named behind another", "missed", "behind"],
      scores.map(({ slip, rows, first, named, missed, behind }) => [
        `\`${slip}\``,
        String(rows),
        `${((100 * first) / rows).toFixed(1)} %`,
        String(named),
        String(missed),
        behindOf(behind),
      ]),
    ),
    "## What cannot be told apart",
    "`readings-averaged` is named first in far fewer than 90 of 100 records. Two readings that agree lie a graduation apart at most, and the result is reported in steps of a graduation, so their average rounds to the result of one of them: to the right one, which is no mistake, or to that of the first reading. Where the sheet does not record the final reading, nothing in the row tells `readings-averaged` from `first-reading-used` then. Looking into the wrong column is the simpler mistake and stands first; the other is named behind it. Putting the average first would only turn the shortfall round, to about 80 of 100 for the first reading. With the final reading in the sheet, or with an average written to the hundredth, the two are told apart.",
    "The others fall behind where two slips lead to one number: a correction that is forgotten and a first reading that is higher by as much; a half percent, to which many other slips lead as well; alcohol in litres read as pints, for which no correction is due, and a correction that is forgotten.",
  );
}

function behindOf(behind: Score["behind"]): string {
  return Object.entries(behind)
    .sort(([one, a], [other, b]) => b - a || (one < other ? -1 : 1))
    .map(([slip, count]) => `${slip} ${count}`)
    .join(", ");
}
