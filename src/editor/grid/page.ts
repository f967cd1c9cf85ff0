import * as vscode from 'vscode'
import { language } from '../../core/words/say'
import { pageWords, type PageName } from '../words'

/** The page of a webview: one script and what it imports (which its nonce lets in as well), one style sheet, nothing from elsewhere and nothing inline. `told` is what it knows from the start, as its data. */
export function pageHtml(webview: vscode.Webview, extension: vscode.Uri, name: PageName, title: string, told: Readonly<Record<string, string>> = {}): string {
  const file = (path: string) => webview.asWebviewUri(vscode.Uri.joinPath(extension, 'dist', 'webview', path)).toString()
  const nonce = makeNonce()
  const data = Object.entries(told).map(([key, value]) => ` data-${key}="${escapeAttribute(value)}"`).join('')
  const policy = [
    `default-src 'none'`, `script-src 'nonce-${nonce}'`, `style-src ${webview.cspSource}`, `font-src ${webview.cspSource}`, `img-src ${webview.cspSource} data:`,
  ].join('; ')
  return `<!DOCTYPE html>
<html lang="${language()}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title>
<link rel="stylesheet" href="${file(`${name}.css`)}">
</head>
<body>
<div id="app" data-detent="${name}" data-words="${escapeAttribute(JSON.stringify(pageWords(name)))}"${data}></div>
<script type="module" nonce="${nonce}" src="${file(`${name}.js`)}"></script>
</body>
</html>`
}

const escapeAttribute = (text: string) => text.replaceAll('&', '&amp;').replaceAll('"', '&quot;')

function makeNonce(): string {
  return [...crypto.getRandomValues(new Uint8Array(16))].map((byte) => byte.toString(16).padStart(2, '0')).join('')
}

/** What a webview may load: our built files, and nothing of the workspace. */
export function webviewOptions(extension: vscode.Uri): vscode.WebviewOptions {
  return { enableScripts: true, localResourceRoots: [vscode.Uri.joinPath(extension, 'dist', 'webview')] }
}
