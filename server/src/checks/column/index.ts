import { baseWeld, baseWeldSize } from "./base-weld.js";
import { columnBracket } from "./bracket.js";
import { columnDrift, columnDriftAtStrength } from "./drift.js";
import { columnInteraction } from "./interaction.js";
import { columnKneeBrace } from "./knee-brace.js";
import { seismicAxial } from "./seismic-axial.js";
import { columnShear } from "./shear.js";
import { columnSlenderness } from "./slenderness.js";
import { topBolts } from "./top-bolts.js";
import { topConnection } from "./top-connection.js";
import { topShear } from "./top-shear.js";
import { topWeld } from "./top-weld.js";

/** Checks of the column itself. */
export const columnChecks = [topConnection, topShear, topBolts, topWeld, columnInteraction, columnShear, columnSlenderness, seismicAxial, baseWeld, baseWeldSize, columnBracket, columnKneeBrace, columnDrift, columnDriftAtStrength];
