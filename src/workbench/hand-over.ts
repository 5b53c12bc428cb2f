const KINDS = {
  workbook: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
  csv: "text/csv;charset=utf-8",
} as const;
/** Milliseconds after which the browser has surely taken the file. */
const TAKEN = 60_000;

/** Hands a file over to the browser, which puts it where downloads go and asks nothing of anybody. */
export function handOver(
  name: string,
  bytes: Uint8Array,
  kind: keyof typeof KINDS = "workbook",
): void {
  const address = URL.createObjectURL(
    new Blob([bytes as Uint8Array<ArrayBuffer>], { type: KINDS[kind] }),
  );
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), TAKEN);
}
