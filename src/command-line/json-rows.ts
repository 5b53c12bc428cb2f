import type { CellValue } from "../measure/cell-value";
import { Problem } from "../measure/problem";
import type { StreamedRow } from "./streamed-row";

/**
 * Rows of JSON lines: objects, whose names become the headers, or lists of cells, of which the first
 * holds the headers. The names of the first object are the headers for all; a name that comes later is
 * said, once, since it has no column.
 */
export class JsonRows {
  private rest = "";
  private line = 0;
  private headers: readonly string[] | undefined;
  private readonly unknown = new Set<string>();

  constructor(
    private readonly longest: number,
    private readonly tooLong: (line: number, length: number) => never,
  ) {}

  *take(text: string): Generator<StreamedRow> {
    const lines = (this.rest + text).split("\n");
    this.rest = lines.pop()!;
    for (const line of lines) yield* this.rowsOf(line);
    if (this.rest.length > this.longest) this.tooLong(this.line + 1, this.rest.length);
  }

  *end(): Generator<StreamedRow> {
    if (this.rest.trim() !== "") yield* this.rowsOf(this.rest);
    this.rest = "";
  }

  private *rowsOf(text: string): Generator<StreamedRow> {
    const line = ++this.line;
    if (text.trim() === "") return;
    let value: unknown;
    try {
      value = JSON.parse(text);
    } catch {
      yield { line, problem: new Problem("line-is-no-json", { line }) };
      return;
    }
    if (Array.isArray(value)) yield { line, cells: value.map(cellOf) };
    else if (typeof value === "object" && value !== null)
      yield* this.rowsOfObject(line, value as Record<string, unknown>);
    else yield { line, problem: new Problem("line-is-no-json", { line }) };
  }

  private *rowsOfObject(line: number, object: Record<string, unknown>): Generator<StreamedRow> {
    if (!this.headers) {
      this.headers = Object.keys(object);
      yield { line, cells: this.headers };
    }
    const { headers, unknown } = this;
    for (const name of Object.keys(object)) {
      if (headers.includes(name) || unknown.has(name)) continue;
      unknown.add(name);
      yield { line, problem: new Problem("name-not-in-first-line", { line, column: name }) };
    }
    yield { line, cells: headers.map((name) => cellOf(object[name])) };
  }
}

function cellOf(value: unknown): CellValue {
  if (value === null || value === undefined) return null;
  if (typeof value === "string" || typeof value === "number" || typeof value === "boolean")
    return value;
  return JSON.stringify(value);
}
