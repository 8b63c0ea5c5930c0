import { columnInteraction } from "./interaction.js";
import { columnSlenderness } from "./slenderness.js";

/** Checks of the column itself. */
export const columnChecks = [columnInteraction, columnSlenderness];
