/** The page of the derivation view before its script fills it: strict policy, one script, one style sheet. */
import { randomBytes } from "node:crypto";
import * as vscode from "vscode";

export const pageHtml = (webview: vscode.Webview, distUri: vscode.Uri): string => {
  const nonce = randomBytes(18).toString("base64url");
  const from = (name: string) => webview.asWebviewUri(vscode.Uri.joinPath(distUri, name)).toString();
  const policy = `default-src 'none'; style-src ${webview.cspSource}; font-src ${webview.cspSource}; script-src 'nonce-${nonce}'`;
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<link rel="stylesheet" href="${from("view.css")}">
<title>Derivation</title>
</head>
<body>
<div id="sheet"></div>
<p id="announcer" class="unseen" role="status" aria-live="polite"></p>
<script nonce="${nonce}" src="${from("view.js")}"></script>
</body>
</html>`;
};
