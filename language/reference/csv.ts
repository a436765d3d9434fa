/** Tables for spreadsheets. A cell that a spreadsheet would take for a formula is made text by an apostrophe before it. */
export function csvOf(rows: readonly (readonly (string | number | undefined)[])[]): string {
    return rows.map(row => `${row.map(cell).join(',')}\r\n`).join('');
}
function cell(value: string | number | undefined): string {
    if (value === undefined) return '';
    if (typeof value === 'number') return value === value ? String(value) : '';
    // A number stays one, a minus before it or not; tabs and returns at the front lead into formulas too.
    const text = /^[\s\u0000]*[=+\-@|%\uff1d\uff0b\uff0d\uff20]/.test(value) && !/^[+-]?\d+(\.\d+)?$/.test(value) ? `'${value}` : value;
    return /[",\r\n\t;]/.test(text) || text !== value ? `"${text.replace(/"/g, '""')}"` : text;
}
