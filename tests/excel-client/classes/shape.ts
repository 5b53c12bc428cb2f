import type { PictureModel, SheetModel } from "../sheet-model";
import { Emulated, EmulatedCollection, type Session } from "./emulated";

export class ShapeCollection extends EmulatedCollection {
  readonly className = "ShapeCollection";

  constructor(
    session: Session,
    readonly sheet: SheetModel,
  ) {
    super(session);
  }

  items(): Shape[] {
    return this.sheet.pictures.map((picture) => new Shape(this.session, picture));
  }
  AddImage(base64: string): Shape {
    const model = { base64, left: 0, top: 0, width: 0, height: 0, description: "" };
    this.sheet.pictures.push(model);
    return new Shape(this.session, model);
  }
}

/** A picture on a sheet; its place and size are in points. */
class Shape extends Emulated {
  readonly className = "Shape";

  constructor(
    session: Session,
    readonly model: PictureModel,
  ) {
    super(session);
  }

  set Left(points: number) {
    this.model.left = points;
  }
  set Top(points: number) {
    this.model.top = points;
  }
  set Width(points: number) {
    this.model.width = points;
  }
  set Height(points: number) {
    this.model.height = points;
  }
  set AltTextDescription(text: string) {
    this.model.description = text;
  }
}
