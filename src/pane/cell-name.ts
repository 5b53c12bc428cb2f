/** Names a cell as people write it: row 6 and column 2, from 0, are "C7". */
export function cellName({
  row,
  column,
}: {
  readonly row: number;
  readonly column: number;
}): string {
  return columnName(column) + (row + 1);
}

function columnName(column: number): string {
  const letter = String.fromCharCode(65 + (column % 26));
  return column < 26 ? letter : columnName(Math.floor(column / 26) - 1) + letter;
}
