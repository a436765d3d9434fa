/** Plain words for clients that show neither Markdown nor templates. */
import type { ClientCapabilities, MarkupContent } from 'vscode-languageserver';

/** Markdown without its marks. */
export function plainOf(markdown: string): string {
    return markdown.replace(/^#+ +/gm, '').replace(/^---$/gm, '').replace(/\*\*([^*]+)\*\*/g, '$1').replace(/(^|[\s(])\*([^*\n]+)\*/g, '$1$2').replace(/`([^`]*)`/g, '$1')
        .replace(/\[([^\]]*)\]\([^)]*\)/g, '$1').replace(/^\|[-| ]+\|$/gm, '').replace(/ {2}$/gm, '').replace(/\n{3,}/g, '\n\n').trim();
}
/** A template without its tab stops: the first choice, the placeholder. */
export function plainTemplate(snippet: string): string {
    return snippet.replace(/\$\{\d+\|([^,|]*)[^}]*\}/g, '$1').replace(/\$\{\d+:([^}]*)\}/g, '$1').replace(/\$\{?\d+\}?/g, '').replace(/\\([$}\\])/g, '$1');
}
/** Content in the form that a client announced. */
export function markup(markdown: string, formats: readonly string[] | undefined): MarkupContent {
    return formats?.includes('markdown') ? { kind: 'markdown', value: markdown } : { kind: 'plaintext', value: plainOf(markdown) };
}
export function hoverFormats(client: ClientCapabilities): readonly string[] | undefined {
    return client.textDocument?.hover?.contentFormat;
}
