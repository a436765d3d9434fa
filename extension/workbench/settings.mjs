// Defaults of the light workbench; whoever uses it may change each of them.

/** For a person who opens the workbench. */
export const readable = {
    'files.autoSave': 'afterDelay',
    'files.autoSaveDelay': 500,
    'explorer.confirmDelete': true,
    'editor.minimap.enabled': false,
    'editor.hover.delay': 200,
    'outline.showVariables': true,
    // The themes' own colour for numbers at line ends is fainter (3.0 : 1) than text should be.
    'workbench.colorCustomizations': {
        '[Light 2026]': { 'editorInlayHint.foreground': '#52606d', 'editorInlayHint.background': '#0000000a' },
        '[Dark 2026]': { 'editorInlayHint.foreground': '#a3b1bd', 'editorInlayHint.background': '#ffffff0d' },
    },
};
