import { columnBracket } from "./bracket.js";
import { columnDrift, columnDriftAtStrength } from "./drift.js";
import { columnInteraction } from "./interaction.js";
import { columnShear } from "./shear.js";
import { columnSlenderness } from "./slenderness.js";
import { topConnection } from "./top-connection.js";

/** Checks of the column itself. */
export const columnChecks = [topConnection, columnInteraction, columnShear, columnSlenderness, columnBracket, columnDrift, columnDriftAtStrength];
