import { WEIGHTS, type Weight } from "../../fieldsheet/rule";
import type { CellPlace, ReadArea, ReadScope, Settings } from "../../hosts/sheet-host";
import type { DecimalMark } from "../../measure/number-from-cell";
import type { CheckedArea } from "./checked-area";
import { createStore, type Store } from "../kit/store";

/** Work that is under way. */
export interface Work {
  readonly label: string;
  /** Share that is done, 0 to 1; absent where it cannot be told. */
  readonly share?: number;
  /** Whether it can be ended before it is done. */
  readonly canStop: boolean;
}

/** One column as it was read, for a trend of its numbers. */
export interface ReadColumn {
  readonly read: ReadArea;
  readonly decimal: DecimalMark;
}

/** All that the pane knows. Numbers that the user types stay texts until they are used. */
export interface PaneState {
  readonly scope: ReadScope;
  /** Specification limits in %, for a sheet without its own. */
  readonly low: string;
  readonly high: string;
  readonly withNotes: boolean;
  readonly live: boolean;
  /** Standard deviation of one result in %; "" for the published one. */
  readonly deviation: string;

  readonly checked: CheckedArea | undefined;
  /** The column that the trend is of; that of the checked table when absent. */
  readonly trendColumn: ReadColumn | undefined;
  /** Findings of these weights are listed. */
  readonly shown: ReadonlySet<Weight>;
  readonly cursor: CellPlace | undefined;
  readonly work: Work | undefined;
  readonly error: string;
  readonly status: string;
}

export type PaneStore = Store<PaneState>;

const KEPT = ["scope", "low", "high", "withNotes", "live", "deviation"] as const;

/** The state when the pane opens. */
export function createPaneStore(): PaneStore {
  return createStore<PaneState>({
    scope: "table",
    low: "",
    high: "",
    withNotes: true,
    live: false,
    deviation: "",
    checked: undefined,
    trendColumn: undefined,
    shown: new Set(WEIGHTS),
    cursor: undefined,
    work: undefined,
    error: "",
    status: "",
  });
}

/** What is kept with the workbook. */
export function keptSettings(state: PaneState): Settings {
  return Object.fromEntries(KEPT.map((name) => [name, state[name]]));
}

/** What was kept, as far as it still fits: somebody may have changed it. */
export function stateFromSettings(kept: Settings, now: PaneState): Partial<PaneState> {
  const fits = KEPT.filter((name) => typeof kept[name] === typeof now[name]);
  const known = Object.fromEntries(fits.map((name) => [name, kept[name]]));
  const scope: ReadScope = kept.scope === "selection" ? "selection" : "table";
  return { ...known, scope };
}
