/** An error as Excel answers it. The texts are what the host must never pass on. */
export class ExcelError extends Error {
  constructor(
    readonly code: string,
    message = `raw text of the host for ${code}`,
  ) {
    super(message);
  }
}
