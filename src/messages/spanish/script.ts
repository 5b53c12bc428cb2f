import { learn } from "../speech";
import { spanish } from ".";

/* A script of its own, so that neither the functions nor the pane carry what both of them say. */
learn("es", spanish);
