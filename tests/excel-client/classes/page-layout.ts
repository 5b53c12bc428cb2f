import type { SheetModel } from "../sheet-model";
import { Emulated, type Session } from "./emulated";

/** How a sheet is printed: what is set is kept in its model under our names. */
export class PageLayout extends Emulated {
  readonly className: string = "PageLayout";

  constructor(
    session: Session,
    readonly sheet: SheetModel,
  ) {
    super(session);
  }

  get HeadersFooters(): HeaderFooterGroup {
    return new HeaderFooterGroup(this.session, this.sheet);
  }
  set Orientation(orientation: string) {
    this.sheet.page.orientation = orientation;
  }
  set Zoom(zoom: { horizontalFitToPages?: number }) {
    this.sheet.page.pagesWide = zoom.horizontalFitToPages;
  }
}

class HeaderFooterGroup extends PageLayout {
  override readonly className = "HeaderFooterGroup";

  get DefaultForAllPages(): HeaderFooter {
    return new HeaderFooter(this.session, this.sheet);
  }
}

class HeaderFooter extends PageLayout {
  override readonly className = "HeaderFooter";

  set LeftFooter(text: string) {
    this.sheet.page.leftFooter = text;
  }
  set RightFooter(text: string) {
    this.sheet.page.rightFooter = text;
  }
}
