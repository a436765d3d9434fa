import { styleText } from 'node:util';

export type Styles = ReturnType<typeof styles>;

/** Quiet colours where the output is a terminal that has them; plain text elsewhere. */
export function styles(colour: boolean) {
    const paint = (format: Parameters<typeof styleText>[0]) => (text: string) => (colour && text ? styleText(format, text, { validateStream: false } as never) : text);
    return { error: paint('red'), warning: paint('yellow'), hint: paint('cyan'), quiet: paint('gray'), strong: paint('bold') };
}
