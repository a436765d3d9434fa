// What the panel's page and the extension say to each other, and what the server tells for it. The page knows nothing else.

export interface PanelNumber {
    name: string;
    label: string;
    value: string;
    spread: string;
    meaning: string;
    was?: string;
}
export interface PanelTurn {
    name: string;
    label: string;
    meaning: string;
    text: string;
    now: number;
    low: number;
    high: number;
    step: number;
    unit: string;
    writes: boolean;
}
export interface PanelFinding {
    severity: 'error' | 'warning' | 'hint';
    rule: string;
    message: string;
    uri: string;
    line: number;
    sort: 'there' | 'new' | 'gone';
}
export interface Panel {
    title: string;
    stage: string;
    part?: { name: string; kind: string };
    turned?: { name: string; text: string };
    turns: PanelTurn[];
    here: PanelNumber[];
    key: PanelNumber[];
    findings: PanelFinding[];
    hints: number;
    caution: string;
    /** The part that the cursor is on, in the text or by its name; the panel shows the stack where there is none. */
    at?: string;
    pictures: { name: string; title: string }[];
    picture?: { name: string; title: string; svg?: string; why?: string };
}
export interface Turning {
    name: string;
    to: number;
}
export type Scale = 'readable' | 'fit' | number;
/** How pictures are looked at; kept from one panel to the next. */
export interface PictureView {
    /** By the name of the picture. */
    scales: Readonly<Record<string, Scale>>;
    /** Layers that are not shown. */
    hidden: readonly string[];
}
/** From the extension to the page. `look`: somebody asks for the part in the picture. */
export type ToPage = { sort: 'panel'; panel: Panel | null; look: boolean } | { sort: 'view'; view: PictureView };
/** From the page to the extension. */
export type FromPage =
    | { sort: 'ready' | 'theme'; theme: string; paper: string } | { sort: 'turn'; turning: Turning } | { sort: 'release' } | { sort: 'write'; turning: Turning } | { sort: 'goTo'; uri: string; line: number }
    | { sort: 'view'; view: PictureView } | { sort: 'part'; name: string } | { sort: 'picture'; name: string } | { sort: 'explain'; rule: string };
