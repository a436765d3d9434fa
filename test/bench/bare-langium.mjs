// A bare Langium server that computes nothing: the yardstick for what an edit may cost. Built on demand into the cache.
// Its grammar has values inside and cross-references, as the library intends. Two of them: `sparse` for short lines of a text
// of its own, `rig` for the very text that our server reads.
import { EmptyFileSystem } from 'langium';
import { createServicesForGrammar } from 'langium/grammar';
import { createDefaultModule, createDefaultSharedModule, startLanguageServer } from 'langium/lsp';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';

const grammars = {
    sparse: String.raw`
grammar Bare
entry Model: items+=Item*;
Item: Part | Note;
Part: 'part' name=ID ('like' base=[Part:ID])? '{' values+=Value* '}';
Value: key=ID ':' number=NUMBER unit=ID?;
Note: 'note' of=[Part:ID] text=STRING;
terminal NUMBER returns number: /[0-9]+(\.[0-9]+)?/;
terminal ID: /[A-Za-z_][\w-]*/;
terminal STRING: /"[^"\n]*"/;
hidden terminal WS: /\s+/;
hidden terminal COMMENT: /#[^\n]*/;
`,
    rig: String.raw`
grammar Whole
entry Model: items+=Item*;
Item: Part | Path | Line;
Part: kind=KIND name=WORD? ('like' base=[Part:WORD])? ('{' (properties+=Property | paths+=Path | lines+=Line)* '}')?;
Property: key=KEY ':' value=Value?;
Path: 'path' medium=KEY ':' value=Value;
Line: word=('rig' | 'library' | 'use' | 'let' | 'expect' | 'allow' | 'weigh') value=Value? (case=KEY ':' held=Value)?;
Value: elements+=Element+;
Element: Quantity | Name | Text | Sign;
Quantity: number=NUMBER unit=WORD?;
Name: name=WORD;
Text: text=STRING;
Sign: sign=(SIGN | ':');
terminal KIND: /(?<![^\n])[A-Za-z_][\w-]*/;
terminal KEY: /[A-Za-z_][\w.-]*(?=[ \t]*:)/;
terminal NUMBER returns number: /[0-9]+(\.[0-9]+)?/;
terminal WORD: /[A-Za-z_°%µΩ€][\w.°%µΩ€²³-]*/;
terminal STRING: /"[^"\n]*"/;
terminal SIGN: /->|\.\.|[-+*\/x<>=(),±·]/;
hidden terminal WS: /\s+/;
hidden terminal COMMENT: /#[^\n]*/;
`,
};
const grammar = grammars[process.argv.includes('--rig') ? 'rig' : 'sparse'];
const connection = createConnection(ProposedFeatures.all);
void EmptyFileSystem;
const services = await createServicesForGrammar({
    grammar, languageMetaData: { languageId: 'bare', fileExtensions: ['.bare'], caseInsensitive: false, mode: 'production' },
    module: undefined,
    sharedModule: undefined,
});
// The grammar services above give the parser; the language server parts come from the default modules.
const { inject } = await import('langium');
const shared = inject(createDefaultSharedModule({ connection, fileSystemProvider: EmptyFileSystem.fileSystemProvider }), { AstReflection: () => services.shared.AstReflection });
const language = inject(createDefaultModule({ shared }), { Grammar: () => services.Grammar, LanguageMetaData: () => ({ languageId: 'bare', fileExtensions: ['.bare'], caseInsensitive: false, mode: 'production' }), parser: {} });
shared.ServiceRegistry.register(language);
startLanguageServer(shared);
