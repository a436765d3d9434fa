// Outside library that brings no types; only what the tests call.
declare module 'js-yaml' {
    export function load(text: string): unknown;
}
