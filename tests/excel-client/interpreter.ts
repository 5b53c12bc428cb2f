import { Emulated, EmulatedCollection, type Session } from "./classes/emulated";
import { Workbook } from "./classes/workbook";
import { ExcelError } from "./excel-error";
import {
  ACTION,
  PATH,
  type Action,
  type ArgumentInfo,
  type RequestBody,
  type ResponseBody,
} from "./wire";

type Member = Record<string, unknown>;

/** What an interpreter needs to know of the host. */
export interface Rules {
  /** Throws where a member lies above the requirement set of this Excel. */
  demandSet(className: string, member: string): void;
}

/** Carries out requests of the client library on the emulated classes, in the order of their actions. */
export class Interpreter {
  private readonly kept = new Map<string, Emulated>();
  private given = 0;

  constructor(
    private readonly session: Session,
    private readonly rules: Rules,
  ) {}

  /**
   * @param most How many actions are carried out before the request breaks off; all unless given.
   * @param breakCode The error it then breaks off with.
   */
  execute(body: RequestBody, most = Infinity, breakCode = "GeneralException"): ResponseBody {
    const request = new Request(this.session, this.rules, this.kept, body, () =>
      this.newReference(),
    );
    const Results: ResponseBody["Results"] = [];
    let index = 0;
    try {
      for (const action of body.Actions) {
        if (index >= most) throw new ExcelError(breakCode);
        Results.push({ ActionId: action.Id, Value: request.act(action) ?? null });
        index += 1;
      }
      if (most !== Infinity) throw new ExcelError(breakCode);
      return { Results };
    } catch (error) {
      if (!(error instanceof ExcelError)) throw error;
      const { code: Code, message: Message } = error;
      const ActionIndex = Math.min(index, body.Actions.length - 1);
      return { Results, Error: { Code, Message, ActionIndex, Location: "" } };
    }
  }

  private newReference(): string {
    this.given += 1;
    return `reference-${this.given}`;
  }
}

/** One request: its objects are reached once and then remembered. */
class Request {
  private readonly reached = new Map<number, Emulated | null>();

  constructor(
    private readonly session: Session,
    private readonly rules: Rules,
    private readonly kept: Map<string, Emulated>,
    private readonly body: RequestBody,
    private readonly newReference: () => string,
  ) {}

  act(action: Action): unknown {
    if (action.ActionType === ACTION.trace) return null;
    const object = this.reach(action.ObjectPathId);
    switch (action.ActionType) {
      case ACTION.instantiate:
        return object === null ? null : idOf(object);
      case ACTION.query:
        return object === null ? null : this.query(object, action.QueryInfo?.Select ?? []);
      case ACTION.setProperty:
        this.set(demand(object), action.Name, this.argumentsOf(action.ArgumentInfo)[0]);
        return null;
      case ACTION.method:
        return this.callAction(object, action);
      default:
        throw new Error(`action type ${action.ActionType} is not emulated`);
    }
  }

  private callAction(object: Emulated | null, action: Action): unknown {
    const given = this.argumentsOf(action.ArgumentInfo);
    if (action.Name === "_KeepReference") {
      if (object) this.keep(object);
      return null;
    }
    if (action.Name === "_RemoveReference") {
      for (const reference of given) this.kept.delete(String(reference));
      return null;
    }
    const result = this.call(demand(object), action.Name, given);
    return result instanceof Emulated ? null : result;
  }

  private keep(object: Emulated): void {
    object.referenceId ??= this.newReference();
    this.kept.set(object.referenceId, object);
  }

  private reach(id: number): Emulated | null {
    const before = this.reached.get(id);
    if (before !== undefined) return before;
    const object = this.follow(id);
    this.reached.set(id, object);
    return object;
  }

  private follow(id: number): Emulated | null {
    const path = this.body.ObjectPaths[id];
    if (!path) throw new Error(`the request holds no path ${id}`);
    if (path.ObjectPathType === PATH.root) return new Workbook(this.session);
    if (path.ObjectPathType === PATH.nothing) return null;
    if (path.ObjectPathType === PATH.reference) {
      const object = this.kept.get(path.Name);
      if (!object) throw new ExcelError("InvalidReference");
      return object;
    }
    const parent = this.reach(path.ParentObjectPathId ?? 0);
    const given = this.argumentsOf(path.ArgumentInfo);
    switch (path.ObjectPathType) {
      case PATH.method:
        return this.call(demand(parent), path.Name, given) as Emulated | null;
      case PATH.property:
        return this.get(demand(parent), path.Name) as Emulated | null;
      case PATH.item:
        return this.call(demand(parent), "GetItem", given) as Emulated;
      default:
        throw new Error(`path type ${path.ObjectPathType} is not emulated`);
    }
  }

  private argumentsOf(info: ArgumentInfo | undefined): unknown[] {
    return (info?.Arguments ?? []).map((given, i) => {
      const path = info?.ReferencedObjectPathIds?.[i];
      return path ? this.reach(path) : given;
    });
  }

  private query(object: Emulated, select: readonly string[]): Member {
    if (!(object instanceof EmulatedCollection)) return this.properties(object, select);
    return {
      _Items: object.items().map((item) => ({ ...idOf(item), ...this.properties(item, select) })),
    };
  }

  private properties(object: Emulated, select: readonly string[]): Member {
    return Object.fromEntries(
      select.map((name) => [capital(name), this.get(object, capital(name))]),
    );
  }

  private get(object: Emulated, name: string): unknown {
    this.demandMember(object, name);
    return (object as unknown as Member)[name];
  }

  private set(object: Emulated, name: string, value: unknown): void {
    this.demandMember(object, name);
    (object as unknown as Member)[name] = value;
  }

  private call(object: Emulated, name: string, given: readonly unknown[]): unknown {
    this.demandMember(object, name);
    return (object as unknown as Record<string, (...given: unknown[]) => unknown>)[name]?.(
      ...given,
    );
  }

  private demandMember(object: Emulated, name: string): void {
    if (!(name in object)) throw new Error(`${object.className}.${name} is not emulated`);
    // Members with an underscore are the library's own; their sets are those of the events.
    if (!name.startsWith("_")) this.rules.demandSet(object.className, small(name));
  }
}

/** A member of nothing is reached: the client has gone on from a null object. */
function demand(object: Emulated | null): Emulated {
  if (object === null) throw new ExcelError("InvalidOperation");
  return object;
}

function idOf(object: Emulated): Member {
  if (object.referenceId !== undefined) return { _ReferenceId: object.referenceId };
  return "Id" in object ? { Id: object.Id } : {};
}

function capital(name: string): string {
  return name.charAt(0).toUpperCase() + name.slice(1);
}

function small(name: string): string {
  return name.charAt(0).toLowerCase() + name.slice(1);
}
