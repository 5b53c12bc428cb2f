import { isIssue, type Issue } from "../../measure/issue";
import { plainly } from "../kept-columns";

/** What a line of a setup says, and on which line it stands. */
interface OnLine<T> {
  readonly line: number;
  readonly value: T;
}

/** What the lines of one part of a setup say. Two that say different things of the same are both set aside. */
export class AgreedLines<T> {
  private readonly byName = new Map<string, OnLine<T>>();
  private readonly disputed = new Set<string>();

  /**
   * @param nameOf Of what a line speaks.
   * @param twice What to say of a line that speaks otherwise than one before.
   */
  constructor(
    private readonly nameOf: (value: T) => string,
    private readonly twice: (line: number, value: T, before: number) => Issue,
  ) {}

  /** Takes what a line says; returns what is wrong with it otherwise. */
  add(line: number, value: T | Issue | undefined): Issue | undefined {
    if (value === undefined) return undefined;
    if (isIssue(value)) return value;
    const name = plainly(this.nameOf(value));
    const before = this.byName.get(name);
    if (!before) {
      this.byName.set(name, { line, value });
      return undefined;
    }
    if (said(before.value) === said(value)) return undefined;
    this.disputed.add(name);
    return this.twice(line, value, before.line);
  }

  /** What is not disputed, by name. */
  agreed(): ReadonlyMap<string, T> {
    const lines = [...this.byName].filter(([name]) => !this.disputed.has(name));
    return new Map(lines.map(([name, { value }]) => [name, value]));
  }
}

function said(value: unknown): string {
  return JSON.stringify(value).toLowerCase();
}
