import type { FieldId } from "./fields";

/** A field that a column may be, with how well. */
export interface Pair {
  readonly column: number;
  readonly field: FieldId;
  readonly score: number;
}

/** A pair of the best assignment. */
export interface Assigned extends Pair {
  /** By how much the best assignment is better than the best one without this pair. */
  readonly lead: number;
}

/**
 * Gives each field one column and each column one field, so that all together fit best.
 *
 * Columns and fields that have nothing to do with one another are looked at apart. The same pairs give
 * the same answer, in whatever order they come.
 */
export function assign(pairs: readonly Pair[]): readonly Assigned[] {
  return connected(pairs).flatMap((group) => {
    if (group.length === 1) return group.map((pair) => ({ ...pair, lead: pair.score }));
    const best = bestOf(group);
    const total = totalOf(best);
    return best.map((pair) => {
      const without = bestOf(group.filter((other) => other !== pair));
      return { ...pair, lead: total - totalOf(without) };
    });
  });
}

/** Groups of pairs that share columns or fields, directly or by others. */
function connected(pairs: readonly Pair[]): readonly (readonly Pair[])[] {
  const above = new Map<string, string>();
  const top = (name: string): string => {
    let at = name;
    while (above.get(at) !== undefined && above.get(at) !== at) at = above.get(at)!;
    above.set(name, at);
    return at;
  };
  for (const { column, field } of pairs) above.set(top(String(column)), top(field));
  const groups = new Map<string, Pair[]>();
  for (const pair of pairs) {
    const group = top(pair.field);
    groups.set(group, [...(groups.get(group) ?? []), pair]);
  }
  return [...groups.values()];
}

function totalOf(pairs: readonly Pair[]): number {
  return pairs.reduce((sum, { score }) => sum + score, 0);
}

/**
 * The pairs of greatest total, by the Hungarian method (Kuhn 1955, in the form with potentials): rows are
 * the fields, columns those of the sheet and one for each field that gets none.
 */
function bestOf(pairs: readonly Pair[]): readonly Pair[] {
  const fields = [...new Set(pairs.map(({ field }) => field))].sort();
  const columns = [...new Set(pairs.map(({ column }) => column))].sort((a, b) => a - b);
  const places = columns.length + fields.length;
  const given = fields.map(() => new Map<number, Pair>());
  for (const pair of pairs)
    given[fields.indexOf(pair.field)]!.set(columns.indexOf(pair.column), pair);
  const cost = (row: number, place: number) => {
    if (place >= columns.length) return place === columns.length + row ? 0 : Infinity;
    const score = given[row]!.get(place)?.score;
    return score === undefined ? Infinity : -score;
  };

  const rowOf = new Array<number>(places + 1).fill(-1);
  const rowPotential = new Array<number>(fields.length).fill(0);
  const placePotential = new Array<number>(places + 1).fill(0);
  for (let row = 0; row < fields.length; row++) {
    // The place past the last one stands for where the new row begins.
    let place = places;
    rowOf[place] = row;
    const least = new Array<number>(places).fill(Infinity);
    const before = new Array<number>(places).fill(places);
    const seen = new Array<boolean>(places + 1).fill(false);
    do {
      seen[place] = true;
      const from = rowOf[place]!;
      let step = Infinity;
      let next = -1;
      for (let other = 0; other < places; other++) {
        if (seen[other]) continue;
        const way = cost(from, other) - rowPotential[from]! - placePotential[other]!;
        if (way < least[other]!) [least[other], before[other]] = [way, place];
        if (least[other]! < step) [step, next] = [least[other]!, other];
      }
      for (let other = 0; other <= places; other++) {
        if (seen[other]) {
          rowPotential[rowOf[other]!]! += step;
          placePotential[other]! -= step;
        } else if (other < places) least[other]! -= step;
      }
      place = next;
    } while (rowOf[place] !== -1);
    while (place !== places) {
      const from = before[place]!;
      rowOf[place] = rowOf[from]!;
      place = from;
    }
  }
  return columns.flatMap((_, place) => {
    const row = rowOf[place]!;
    return row < 0 ? [] : (given[row]!.get(place) ?? []);
  });
}
