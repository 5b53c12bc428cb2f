import type { Session } from "./classes/emulated";
import { addressOf, type Rectangle } from "./block";
import { ExcelError } from "./excel-error";
import { Interpreter } from "./interpreter";
import { setOf } from "./requirement-sets";
import type { SheetModel } from "./sheet-model";
import {
  DELAY_FOR_CELL_EDIT,
  EVENT,
  EVENT_CATEGORY,
  EVENT_TARGET,
  PATH,
  type ClientMessage,
  type RequestBody,
  type ResponseBody,
} from "./wire";
import { WorkbookModel } from "./workbook-model";

/** Bytes of a request or a response that Excel on the web still takes. */
const MOST_BYTES = 5_000_000;

/** How a call is made to fail: before anything of it is done, halfway, or after all of it. */
export type FailureMoment = "before" | "halfway" | "after";

/** What went over the wire. */
export interface Traffic {
  /** Syncs that did something; not those by which the library releases objects in the background. */
  calls: number;
  /** Objects that the client has made, all calls together. */
  objects: number;
  largestRequest: number;
  largestResponse: number;
}

interface Failure {
  readonly call: number;
  readonly code: string;
  readonly moment: FailureMoment;
}

/** Excel, as far as the client library can tell: it takes requests as JSON, answers them and sends events. */
export class EmulatedExcel implements Session {
  /** The workbook that is open; a test may open another. */
  workbook = new WorkbookModel();
  traffic: Traffic = newTraffic();
  /** The newest requirement set of this Excel: 18 is ExcelApi 1.18. */
  requirementSet = 20;
  /** The newest requirement set of its custom functions: 5 is CustomFunctionsRuntime 1.5. */
  customFunctionsSet = 5;
  /** Whether it makes a 0 of a blank cell that it hands over to a custom function. */
  blanksAsZero = false;
  /** Whether this Excel can wait with requests while a cell is being edited. */
  waitsForEditing = true;
  /**
   * What this Excel does with undo groups: it takes them, or it refuses requests in one with a code, from
   * the given one on.
   */
  undoGroups: { readonly code: string; readonly fromCall: number } | undefined;
  /** Whether formulas are handed over with the function names and separators of another language. */
  localFormulas = false;
  /** Whether the add-in has been closed: nothing that it asks for is done or answered any more. */
  closed = false;
  private openUndoGroups = 0;
  private callsInUndoGroup = 0;
  private readonly interruptions: { readonly call: number; readonly act: () => void }[] = [];
  private readonly interpreter = new Interpreter(this, this);
  private readonly waiting: (() => void)[] = [];
  private failure: Failure | undefined;
  private editing = false;
  private readonly toClient: ((text: string) => void)[] = [];

  /** Where answers and events go. */
  connect(receive: (text: string) => void): void {
    this.toClient.splice(0, this.toClient.length, receive);
  }

  /** Takes a message of the client library. */
  receive(text: string): void {
    if (this.closed) return;
    const message = JSON.parse(text) as ClientMessage;
    const { body } = message.message;
    const request = typeof body === "string" ? (JSON.parse(body) as RequestBody) : body;
    const answer = (): void => this.send(answerTo(message.id, this.answer(request, text)));
    if (this.editing && (message.flags & DELAY_FOR_CELL_EDIT) !== 0) this.waiting.push(answer);
    else setImmediate(answer);
  }

  /** Makes a call fail, counted from the next one, which is 1. */
  failCall(call: number, code: string, moment: FailureMoment = "before"): void {
    this.failure = { call: this.traffic.calls + call, code, moment };
  }

  /** Whether the failure asked for has not come yet; it is taken back. */
  takeBackFailure(): boolean {
    const waiting = this.failure !== undefined;
    this.failure = undefined;
    return waiting;
  }

  /** Has somebody do something right before a call, counted from the next one, which is 1. */
  interrupt(call: number, act: () => void): void {
    this.interruptions.push({ call: this.traffic.calls + call, act });
  }

  /** Takes back what has not come yet. */
  takeBackInterruptions(): number {
    return this.interruptions.splice(0).length;
  }

  /** Runs something in an undo group. */
  async inUndoGroup<T>(run: () => Promise<T>): Promise<T> {
    if (this.openUndoGroups === 0) this.callsInUndoGroup = 0;
    this.openUndoGroups += 1;
    try {
      return await run();
    } finally {
      this.openUndoGroups -= 1;
    }
  }

  get isInUndoGroup(): boolean {
    return this.openUndoGroups > 0;
  }

  /** The user begins to edit a cell. */
  startEditing(): void {
    this.editing = true;
  }

  /** The user leaves the cell: what waited for that is done now. */
  stopEditing(): void {
    this.editing = false;
    for (const answer of this.waiting.splice(0)) answer();
  }

  /** Counts from here on. */
  startCounting(): void {
    this.traffic = newTraffic();
  }

  demandSet(className: string, member: string): void {
    if (setOf(className, member) > this.requirementSet) throw new ExcelError("ApiNotFound");
  }

  isSetSupported(name: string, version: string | number = "1.1"): boolean {
    if (name === "DelayForCellEdit") return this.waitsForEditing;
    const newest = {
      ExcelApi: this.requirementSet,
      CustomFunctionsRuntime: this.customFunctionsSet,
    };
    if (!(name in newest)) return false;
    return Number(String(version).split(".")[1] ?? 0) <= newest[name as keyof typeof newest];
  }

  /** The user selects cells of a sheet. */
  userSelects(sheet: SheetModel, ...blocks: Rectangle[]): void {
    this.workbook.select(sheet, ...blocks);
    const address = blocks.map(addressOf).join(",");
    this.fire(EVENT.selectionChanged, { address, worksheetId: sheet.id });
  }

  /** The user has changed something; `how` is Excel's name for it. */
  userChanged(sheet: SheetModel, how: string, address = "A1"): void {
    this.fire(EVENT.changed, this.change(sheet, how, address, "Unknown"));
  }

  /** The user has sorted rows. */
  userSorted(sheet: SheetModel, block: Rectangle): void {
    const address = addressOf(block);
    this.fire(EVENT.rowSorted, { address, source: "Local", worksheetId: sheet.id });
  }

  /** Excel is documented to tell of changed formats as well as of changed values. */
  changedByAddin(sheet: SheetModel, address: string): void {
    this.fire(EVENT.changed, this.change(sheet, "RangeEdited", address, "ThisLocalAddin"));
  }

  private change(sheet: SheetModel, changeType: string, address: string, triggerSource: string) {
    const cause = this.requirementSet >= 14 ? { triggerSource } : {};
    return { changeType, address, worksheetId: sheet.id, source: "Local", ...cause };
  }

  private fire(messageType: number, event: object): void {
    const entry = {
      messageCategory: EVENT_CATEGORY,
      messageType,
      targetId: EVENT_TARGET,
      message: JSON.stringify(event),
    };
    setImmediate(() => this.send(JSON.stringify({ type: 3, message: { entries: [entry] } })));
  }

  /** The body of an answer, as JSON. */
  private answer(request: RequestBody, text: string): string {
    if (releasesOnly(request)) return JSON.stringify(this.interpreter.execute(request));
    this.traffic.calls += 1;
    this.traffic.objects += Object.keys(request.ObjectPaths).length;
    const asked = Buffer.byteLength(text);
    this.traffic.largestRequest = Math.max(this.traffic.largestRequest, asked);
    if (this.editing) return refusal("InvalidOperationInCellEditMode");
    if (asked > MOST_BYTES) return refusal("RequestPayloadSizeLimitExceeded");
    for (const one of this.interruptions.filter(({ call }) => call === this.traffic.calls)) {
      this.interruptions.splice(this.interruptions.indexOf(one), 1);
      one.act();
    }
    if (this.closed) return "";
    if (this.openUndoGroups > 0 && this.undoGroups) {
      this.callsInUndoGroup += 1;
      const { code, fromCall } = this.undoGroups;
      if (this.callsInUndoGroup >= fromCall) return refusal(code);
    }
    const response = JSON.stringify(this.execute(request));
    const answered = Buffer.byteLength(response);
    this.traffic.largestResponse = Math.max(this.traffic.largestResponse, answered);
    return answered > MOST_BYTES ? refusal("ResponsePayloadSizeLimitExceeded") : response;
  }

  private execute(request: RequestBody): ResponseBody {
    const { failure } = this;
    if (failure?.call !== this.traffic.calls) return this.interpreter.execute(request);
    this.failure = undefined;
    const actions = request.Actions.length;
    const done = { before: 0, halfway: Math.floor(actions / 2), after: actions }[failure.moment];
    return this.interpreter.execute(request, done, failure.code);
  }

  private send(message: string): void {
    if (this.closed) return;
    for (const receive of this.toClient) receive(message);
  }
}

function newTraffic(): Traffic {
  return { calls: 0, objects: 0, largestRequest: 0, largestResponse: 0 };
}

/** The message around the body of an answer. */
function answerTo(id: number, body: string): string {
  return `{"id":${JSON.stringify(id)},"type":2,"message":{"statusCode":200,"headers":{},"body":${body}}}`;
}

function refusal(code: string): string {
  const { message } = new ExcelError(code);
  const Error = { Code: code, Message: message, ActionIndex: 0, Location: "" };
  return JSON.stringify({ Results: [], Error } satisfies ResponseBody);
}

/** Whether the client library does nothing but let go of objects, which it does in the background. */
function releasesOnly({ Actions, ObjectPaths }: RequestBody): boolean {
  const isRelease = (name: string): boolean => name === "_RemoveReference";
  return (
    Actions.some(({ Name }) => isRelease(Name)) &&
    Actions.every(
      ({ Name, ObjectPathId }) =>
        isRelease(Name) || ObjectPaths[ObjectPathId]?.ObjectPathType === PATH.root,
    )
  );
}
