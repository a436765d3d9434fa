export interface FuzzResult {
    rounds: number;
    edits: number;
    requests: number;
    rests: number;
    seed: number;
    difference: { text?: string; got: string[]; want: string[] } | undefined;
}
export function fuzz(options?: { seconds?: number; rounds?: number; seed?: number; restsPerRound?: number; log?: (line: string) => void }): Promise<FuzzResult>;
