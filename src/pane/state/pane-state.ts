import { WEIGHTS, type Finding, type Weight } from "../../fieldsheet/finding";
import { OF_THIS_WORKBOOK } from "../../hosts/settings-text";
import type { CellPlace, ReadArea, Settings } from "../../hosts/sheet-host";
import type { DecimalMark } from "../../measure/number-from-cell";
import type { CheckedArea } from "./checked-area";
import type { NoticedCorrection } from "./review/noticed-corrections";
import { DECIDED_AS, type DecidedAs } from "./review/review-of";
import { NO_REVIEW, type ReviewOnSheet } from "./review/review-on-sheet";
import type { SheetWithTests } from "./find-tests";
import type { FindingGrouping, FindingOrder } from "./finding-groups";
import type { Choices } from "./setup/choices";
import type { UnreadTable } from "./setup/column-lines";
import type { SetupSheet } from "./setup/setup-sheet";
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
  /** Specification limits in %, for a sheet without its own. */
  readonly low: string;
  readonly high: string;
  /** Whether a check also marks what it finds. */
  readonly marking: boolean;
  readonly withNotes: boolean;
  readonly live: boolean;
  /** Standard deviation of one result in %; "" for the published one. */
  readonly deviation: string;
  /** What was typed for the head of the report, by what it is. */
  readonly heading: Readonly<Record<string, string>>;

  /** How decimals are written in the workbook. */
  readonly decimal: DecimalMark;
  /** From which year the workbook counts its days; absent where that cannot be told. */
  readonly datesFrom: 1900 | 1904 | undefined;
  /** The setup that is kept in the workbook. */
  readonly setup: SetupSheet | undefined;
  /** Whether it was edited since it was read. */
  readonly setupIsOld: boolean;
  /** What the user has said of columns and not kept in the workbook yet. */
  readonly choices: Choices;
  /** The table in which the last check found no tests, for want of known headers. */
  readonly unread: UnreadTable | undefined;
  readonly checked: CheckedArea | undefined;
  /** Findings that the check before, of the same table, did not have. */
  readonly fresh: ReadonlySet<Finding>;
  /** Sheets that hold tests, where the one that was to be checked holds none. */
  readonly elsewhere: readonly SheetWithTests[];
  /** The column that the trend is of; that of the checked table when absent. */
  readonly trendColumn: ReadColumn | undefined;
  /** Findings of these weights are listed. */
  readonly shown: ReadonlySet<Weight>;
  readonly grouping: FindingGrouping;
  readonly order: FindingOrder;
  /** What has been decided of findings, as it stands in the workbook. */
  readonly review: ReviewOnSheet;
  /** Findings decided so are listed. */
  readonly decided: ReadonlySet<DecidedAs>;
  /** The finding that is to be decided. */
  readonly chosen: Finding | undefined;
  /** As the user typed them; kept until the pane is closed. */
  readonly initials: string;
  /** Corrections that may be recorded, and those that are none, by their keys. */
  readonly corrections: readonly NoticedCorrection[];
  readonly noCorrections: ReadonlySet<string>;
  readonly cursor: CellPlace | undefined;
  readonly work: Work | undefined;
  readonly error: string;
  readonly status: string;
}

export type PaneStore = Store<PaneState>;

const KEPT = ["low", "high", "marking", "withNotes", "live", "deviation"] as const;

/** What the names of the head of the report begin with among the settings. */
const HEADING = OF_THIS_WORKBOOK;

/** The state when the pane opens. */
export function createPaneStore(): PaneStore {
  return createStore<PaneState>({
    low: "",
    high: "",
    marking: false,
    withNotes: true,
    live: false,
    deviation: "",
    heading: {},
    decimal: ".",
    datesFrom: undefined,
    setup: undefined,
    setupIsOld: false,
    choices: new Map(),
    unread: undefined,
    checked: undefined,
    fresh: new Set(),
    elsewhere: [],
    trendColumn: undefined,
    shown: new Set(WEIGHTS),
    grouping: "test",
    order: "row",
    review: NO_REVIEW,
    decided: new Set(DECIDED_AS),
    chosen: undefined,
    initials: "",
    corrections: [],
    noCorrections: new Set(),
    cursor: undefined,
    work: undefined,
    error: "",
    status: "",
  });
}

/** What is kept with the workbook. */
export function keptSettings(state: PaneState): Settings {
  const heading = Object.entries(state.heading).map(([name, typed]) => [HEADING + name, typed]);
  return Object.fromEntries([...KEPT.map((name) => [name, state[name]]), ...heading]);
}

/** What was kept, as far as it still fits: somebody may have changed it. */
export function stateFromSettings(kept: Settings, now: PaneState): Partial<PaneState> {
  const fits = KEPT.filter((name) => typeof kept[name] === typeof now[name]);
  const heading = Object.entries(kept).flatMap(([name, typed]) =>
    name.startsWith(HEADING) && typeof typed === "string"
      ? [[name.slice(HEADING.length), typed] as const]
      : [],
  );
  return {
    ...Object.fromEntries(fits.map((name) => [name, kept[name]])),
    ...(heading.length > 0 && { heading: Object.fromEntries(heading) }),
  };
}
