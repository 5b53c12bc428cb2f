import type { SentenceId } from "../messages/catalogue";
import type { MessageId } from "../messages/pane-catalogue";
import type { Values } from "../messages/sentence";
import { at, Issue, isIssue } from "./issue";

/** What a sentence of the catalogue is filled with. */
export type MessageValues = Values;

/**
 * A failure that is thrown, with the id of its sentence and the values for it: the spreadsheet refused
 * something, the work was stopped. Calculations throw nothing; they return an `Issue`.
 */
export class Problem extends Error {
  constructor(
    readonly id: MessageId,
    readonly values: MessageValues = {},
    readonly unavailable = false,
    readonly place = String(values.where ?? ""),
  ) {
    super(id);
    this.name = "Problem";
  }

  /** An issue thrown on. */
  static of(issue: Issue): Problem {
    return new Problem(issue.id, issue.values, issue.unavailable, issue.place);
  }

  /** The same result; an issue is thrown, in a place. */
  static unless<T>(result: T | Issue, place = ""): T {
    if (isIssue(result)) throw Problem.of(at(place, result));
    return result;
  }

  /** The issue of a problem that a calculation has thrown. */
  get issue(): Issue {
    return new Issue(this.id as SentenceId, this.values, this.place, this.unavailable);
  }
}
