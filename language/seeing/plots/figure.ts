/**
 * What a plot shows, as data: in the units that are written on it, before anything is drawn. The same figure is drawn as a picture, told
 * as a table and held against the rig by its test.
 */
import type { Palette } from '../palette.js';

export type Ink = keyof Palette;
export type Stroke = 'solid' | 'dashed' | 'dotted' | 'dash-dot' | 'long';
export type Mark = 'dot' | 'ring' | 'square' | 'cross' | 'diamond' | 'triangle';

export interface Axis {
    /** What it counts: 'current', 'volts of the stack'. */
    readonly name: string;
    /** Empty for a bare number. */
    readonly unit: string;
    /** 'counted': whole things side by side. */
    readonly scale?: 'linear' | 'log' | 'clock' | 'counted';
    /** Always on the axis, in its unit. */
    readonly holds?: readonly number[];
    /** s after midnight where a clock begins. */
    readonly starts?: number;
}
export interface Line {
    /** As its column is called. */
    readonly name: string;
    /** At its end. */
    readonly label: string;
    /** NaN leaves a hole. */
    readonly x: readonly number[];
    readonly y: readonly number[];
    readonly stroke: Stroke;
    readonly ink: Ink;
    readonly thin?: boolean;
    /** Between which it lies in about 95 % of all cases. */
    readonly band?: readonly { readonly low: number; readonly high: number }[];
    /** Each of its points is one thing, and marked. */
    readonly mark?: Mark;
}
export interface Point {
    readonly name: string;
    readonly label: string;
    readonly x: number;
    readonly y: number;
    readonly mark: Mark;
    readonly ink: Ink;
    readonly xBounds?: readonly [number, number];
    readonly yBounds?: readonly [number, number];
}
/** A limit or set point that lies across. */
export interface Level {
    readonly label: string;
    readonly y: number;
    readonly ink?: Ink;
}
/** The same, standing. */
export interface Upright {
    readonly label: string;
    readonly x: number;
}
export interface Pane {
    readonly y: Axis;
    readonly lines: readonly Line[];
    readonly points?: readonly Point[];
    readonly levels?: readonly Level[];
    /** px, if not the usual height. */
    readonly height?: number;
}
/** Something that happened at a place of the axis across. */
export interface Happening {
    readonly x: number;
    readonly when: string;
    readonly text: string;
    readonly grave: boolean;
}
export interface Curves {
    readonly is: 'curves';
    readonly x: Axis;
    readonly panes: readonly Pane[];
    readonly uprights?: readonly Upright[];
    readonly happenings?: readonly Happening[];
    /** Happenings that there is no room to tell, and are marked only. */
    readonly untold?: readonly number[];
}
export interface Bar {
    readonly name: string;
    /** Where it begins and ends on the axis. */
    readonly from: number;
    readonly to: number;
    /** At the right: its number with unit. */
    readonly told: string;
    /** Quiet, behind the name. */
    readonly note?: string;
    /** A sum stands on its own, a step leads from one sum to the next, a swing lies about a middle. */
    readonly sort: 'sum' | 'step' | 'swing';
    /** In a pattern of its own: told apart without colour. */
    readonly open?: boolean;
}
export interface Bars {
    readonly is: 'bars';
    readonly x: Axis;
    readonly bars: readonly Bar[];
    /** A line across all bars. */
    readonly uprights?: readonly Upright[];
}
export interface Rung {
    readonly part: string;
    /** 'trips above', 'opens at', 'rating'. */
    readonly says: string;
    /** In the unit of the axis, with its bounds where it has some. */
    readonly at: number;
    readonly low?: number;
    readonly high?: number;
    readonly sort: 'running' | 'control' | 'trip' | 'relief' | 'limit';
}
export interface Ladder {
    readonly is: 'ladder';
    readonly axis: Axis;
    /** From the lowest to the highest. */
    readonly rungs: readonly Rung[];
}
export type Shape = Curves | Bars | Ladder;

export type Cell = string | number | undefined;
/** The same as rows: for screen readers, CSV and print. */
export interface Table {
    readonly columns: readonly { readonly name: string; readonly unit: string }[];
    readonly rows: readonly (readonly Cell[])[];
}
export interface Figure {
    readonly shape: Shape;
    readonly table: Table;
    /** What one sees, in a sentence or two, with its own numbers: under the picture and for those who do not see it. */
    readonly says: string;
    /** What was left out or taken for granted. */
    readonly notes?: readonly string[];
}
