/** Server entry. Answers initialize first; what is slow to load is warmed afterwards. */
import { createConnection, ProposedFeatures } from "vscode-languageserver/node";
import { serve } from "./editor/server.js";

serve(createConnection(ProposedFeatures.all));
