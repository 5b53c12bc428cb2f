import { sentenceOf, type SentenceId, type SentenceValues } from "../messages/catalogue";
import type { Phrase, Values } from "../messages/sentence";

/**
 * Why there is no result: the id of a sentence and its values. A calculation returns one in place of
 * its result; nothing is thrown. The words are put on at the edge.
 */
export class Issue<Id extends SentenceId = SentenceId> {
  constructor(
    readonly id: Id,
    readonly values: Values,
    /** What it is about, in the calculation's own terms: "reading", "cups". "" where nothing single. */
    readonly place = "",
    /** Whether the result does not exist yet or never will, rather than an input being wrong. */
    readonly unavailable = false,
  ) {}
}

/** An input that is wrong. */
export function issue<Id extends SentenceId>(id: Id, ...[values]: SentenceValues<Id>): Issue<Id> {
  return new Issue(id, (values ?? {}) as Values);
}

/** A result that is not there: a further reading is needed, the test is void. */
export function unavailable<Id extends SentenceId>(
  id: Id,
  ...[values]: SentenceValues<Id>
): Issue<Id> {
  return new Issue(id, (values ?? {}) as Values, "", true);
}

/** Whether a calculation gave an issue in place of a result. */
export function isIssue(result: unknown): result is Issue {
  return result instanceof Issue;
}

/** The same result; an issue without a place gets this one. */
export function at<T>(place: string, result: T): T {
  if (!(result instanceof Issue) || result.place !== "") return result;
  return new Issue(result.id, result.values, place, result.unavailable) as T;
}

/** The sentence of an issue as a value of another sentence. */
export function issuePhrase({ id, values }: Issue): Phrase {
  return { say: id, values, whole: true };
}

/** The sentence of an issue, after its place. */
export function issueSentence({ id, values, place }: Issue, where: string = place): string {
  return sentenceOf(id, values, where);
}
