import { catalogue } from "../messages/catalogue";
import type { RegisterState } from "./register";

/** How a registered thing stood, in words: "current", "due in 12 days", "overdue by 1 day", "unknown". */
export function registerWords(found: RegisterState): string {
  switch (found.state) {
    case "current":
      return catalogue["register-current"];
    case "due":
      return catalogue["register-due"]({ days: `${found.days}` });
    case "overdue":
      return catalogue["register-overdue"]({ days: `${found.days}` });
    case "unknown":
      return catalogue["register-unknown"];
  }
}
