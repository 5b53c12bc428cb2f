import { around } from "../block";
import type { ChartModel, SheetModel } from "../sheet-model";
import { Emulated, EmulatedCollection, type Session } from "./emulated";
import { Range } from "./range";

export class ChartCollection extends EmulatedCollection {
  readonly className = "ChartCollection";

  constructor(
    session: Session,
    readonly sheet: SheetModel,
  ) {
    super(session);
  }

  items(): Chart[] {
    return this.sheet.charts.map((chart) => new Chart(this.session, chart));
  }
  Add(type: string, from: Range): Chart {
    const model = { type, from: from.block, title: "", place: undefined };
    this.sheet.charts.push(model);
    return new Chart(this.session, model);
  }
}

class Chart extends Emulated {
  readonly className: string = "Chart";

  constructor(
    session: Session,
    readonly model: ChartModel,
  ) {
    super(session);
  }

  get Title(): ChartTitle {
    return new ChartTitle(this.session, this.model);
  }
  SetPosition(first: Range, last: Range): void {
    this.model.place = around([first.block, last.block]);
  }
}

class ChartTitle extends Chart {
  override readonly className = "ChartTitle";

  set Text(text: string) {
    this.model.title = text;
  }
}
