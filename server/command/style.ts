import { styleText } from 'node:util';

/** Quiet colours where the output is a terminal that has them. */
export function styles(colour: boolean) {
    const paint = (format: Parameters<typeof styleText>[0]) => (text: string) => (colour ? styleText(format, text, { validateStream: false } as never) : text);
    return { error: paint('red'), warning: paint('yellow'), hint: paint('cyan'), quiet: paint('gray'), strong: paint('bold') };
}
