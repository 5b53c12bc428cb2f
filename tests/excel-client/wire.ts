/* What goes over the wire between the client library and Excel, as far as it is emulated. */

export interface ArgumentInfo {
  readonly Arguments?: readonly unknown[];
  readonly ReferencedObjectPathIds?: readonly (number | undefined)[];
}

/** How an object is reached. */
export interface ObjectPath {
  readonly Id: number;
  readonly ObjectPathType: number;
  readonly Name: string;
  readonly ParentObjectPathId?: number;
  readonly ArgumentInfo?: ArgumentInfo;
}

/** What is to be done with an object. */
export interface Action {
  readonly Id: number;
  readonly ActionType: number;
  readonly Name: string;
  readonly ObjectPathId: number;
  readonly ArgumentInfo?: ArgumentInfo;
  readonly QueryInfo?: { readonly Select?: readonly string[] };
}

export interface RequestBody {
  readonly Actions: readonly Action[];
  readonly ObjectPaths: Readonly<Record<string, ObjectPath>>;
}

export interface ResponseBody {
  Results: { ActionId: number; Value: unknown }[];
  Error?: { Code: string; Message: string; ActionIndex: number; Location: string };
}

/** A message from the client library to the host. */
export interface ClientMessage {
  readonly id: number;
  readonly flags: number;
  readonly message: { readonly body: RequestBody | string };
}

export const PATH = {
  root: 1,
  method: 3,
  property: 4,
  item: 5,
  reference: 6,
  nothing: 7,
} as const;

export const ACTION = { instantiate: 1, query: 2, method: 3, setProperty: 4, trace: 5 } as const;

/** The flag of a request that waits for the end of cell editing. */
export const DELAY_FOR_CELL_EDIT = 64;

/** Category and numbers of the events that are emulated, and the target they are sent to. */
export const EVENT_CATEGORY = 65_536;
export const EVENT = {
  changed: 10,
  selectionChanged: 14,
  rowSorted: 19,
  columnSorted: 20,
} as const;
export const EVENT_TARGET = "Workbook";
