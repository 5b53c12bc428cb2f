import { excelHost } from "../hosts/excel/excel-host";
import { say } from "../messages/pane-catalogue";
import { mountPane } from "./pane";

const root = document.getElementById("pane")!;

// Outside Excel its library is there without a workbook, or is not there at all.
if (typeof Office === "undefined") root.textContent = say("pane-open-in-excel");
else
  Office.onReady(({ host }) => {
    if (host === Office.HostType.Excel) mountPane(root, excelHost());
    else root.textContent = say("pane-open-in-excel");
  });
