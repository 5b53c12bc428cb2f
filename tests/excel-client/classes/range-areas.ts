import { cellsOf, type Rectangle } from "../block";
import type { SheetModel } from "../sheet-model";
import { ConditionalFormatCollection } from "./conditional-format";
import { Emulated, EmulatedCollection, type Session } from "./emulated";
import { Range } from "./range";

export class RangeAreas extends Emulated {
  readonly className = "RangeAreas";

  constructor(
    session: Session,
    readonly sheet: SheetModel,
    readonly blocks: readonly Rectangle[],
  ) {
    super(session);
  }

  get AreaCount(): number {
    return this.blocks.length;
  }
  get CellCount(): number {
    return this.blocks.reduce((sum, block) => sum + cellsOf(block), 0);
  }
  get Areas(): RangeCollection {
    return new RangeCollection(this.session, this.sheet, this.blocks);
  }
  get ConditionalFormats(): ConditionalFormatCollection {
    return new ConditionalFormatCollection(this.session, this.sheet, this.blocks);
  }
}

export class RangeCollection extends EmulatedCollection {
  readonly className = "RangeCollection";

  constructor(
    session: Session,
    readonly sheet: SheetModel,
    readonly blocks: readonly Rectangle[],
  ) {
    super(session);
  }

  items(): Range[] {
    return this.blocks.map((block) => new Range(this.session, this.sheet, block));
  }
}
