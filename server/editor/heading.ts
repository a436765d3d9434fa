/** The title in a comment line such as `# ==== Gas side ====`; undefined if it is none. */
export function headingIn(line: string): string | undefined {
    return /^#\s*(?:={2,}|-{2,})\s*(.+?)\s*(?:=+|-+)?\s*$/.exec(line)?.[1];
}
