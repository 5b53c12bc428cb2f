import type { SheetModel } from "../sheet-model";
import { Emulated, EmulatedCollection, type Session } from "./emulated";
import type { Range } from "./range";

export class PageBreakCollection extends EmulatedCollection {
  readonly className = "PageBreakCollection";

  constructor(
    session: Session,
    readonly sheet: SheetModel,
  ) {
    super(session);
  }

  items(): PageBreak[] {
    return (this.sheet.page.breaks ?? []).map(() => new PageBreak(this.session));
  }
  Add(before: Range): PageBreak {
    (this.sheet.page.breaks ??= []).push(before.block.top);
    return new PageBreak(this.session);
  }
}

class PageBreak extends Emulated {
  readonly className = "PageBreak";
}
