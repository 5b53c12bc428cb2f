/** A cell of the block that was read, from its top left corner, from 0. */
export interface BlockPlace {
  readonly row: number;
  readonly column: number;
}
