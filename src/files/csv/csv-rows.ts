/**
 * Takes the text of a CSV file piece by piece and gives its rows, so that no more than a row is held.
 * Quotes around a cell may hold delimiters, line ends and doubled quotes (RFC 4180); a quote within a
 * cell is a quote.
 */
export class CsvRows {
  private cells: string[] = [];
  private cell = "";
  private state: "start" | "plain" | "quoted" | "closed" = "start";
  private afterReturn = false;
  /** Characters of the row that is being taken. */
  private length = 0;
  private line = 1;
  private quoteLine = 1;

  /**
   * @param delimiter One character.
   * @param longest Characters of the longest row that is taken; of a longer one `tooLong` is told.
   */
  constructor(
    private readonly delimiter: string,
    private readonly longest: number,
    private readonly tooLong: (line: number, length: number) => never,
  ) {}

  /** The rows that end within a piece of text. */
  *take(text: string): Generator<string[]> {
    for (const sign of pieces(text, this.delimiter)) {
      this.length += sign.length;
      if (this.length > this.longest) this.tooLong(this.line, this.length);
      if (sign === "\n" && this.afterReturn) {
        this.afterReturn = false;
        this.length = 0;
        continue;
      }
      this.afterReturn = false;
      if (this.state === "quoted") {
        if (sign === '"') this.state = "closed";
        else this.cell += sign;
      } else if (sign === '"' && this.state === "start") {
        this.state = "quoted";
        this.quoteLine = this.line;
      } else if (sign === '"' && this.state === "closed") {
        this.cell += '"';
        this.state = "quoted";
      } else if (sign === this.delimiter) this.endCell();
      else if (sign === "\n" || sign === "\r") {
        this.afterReturn = sign === "\r";
        yield this.endRow();
      } else {
        this.cell += sign;
        this.state = "plain";
      }
    }
  }

  /** The row with a quote that is still open, counted from 1. */
  openQuote(): number | undefined {
    return this.state === "quoted" ? this.quoteLine : undefined;
  }

  /** The last row, where no line end follows it. */
  *end(): Generator<string[]> {
    if (this.state !== "start" || this.cells.length > 0) yield this.endRow();
  }

  private endCell(): void {
    this.cells.push(this.cell);
    this.cell = "";
    this.state = "start";
  }

  private endRow(): string[] {
    this.endCell();
    const row = this.cells;
    this.cells = [];
    this.length = 0;
    this.line++;
    return row;
  }
}

/** Stretches without a sign that means something, and these signs one by one. */
function* pieces(text: string, delimiter: string): Generator<string> {
  const code = delimiter.charCodeAt(0);
  let from = 0;
  for (let at = 0; at < text.length; at++) {
    const sign = text.charCodeAt(at);
    if (sign !== code && sign !== 34 && sign !== 10 && sign !== 13) continue;
    if (at > from) yield text.slice(from, at);
    yield text[at]!;
    from = at + 1;
  }
  if (from < text.length) yield text.slice(from);
}
