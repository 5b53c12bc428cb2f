import { testSequences } from "./user-and-pane";

testSequences(false);
