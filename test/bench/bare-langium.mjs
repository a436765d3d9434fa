// A bare Langium server that computes nothing: the yardstick for what an edit may cost. Built on demand into the cache.
// Its grammar is of our own kind of text with values inside the grammar and cross-references, as the library intends.
import { EmptyFileSystem } from 'langium';
import { createServicesForGrammar } from 'langium/grammar';
import { createDefaultModule, createDefaultSharedModule, startLanguageServer } from 'langium/lsp';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';

const grammar = `
grammar Bare
entry Model: items+=Item*;
Item: Part | Note;
Part: 'part' name=ID ('like' base=[Part:ID])? '{' values+=Value* '}';
Value: key=ID ':' number=NUMBER unit=ID?;
Note: 'note' of=[Part:ID] text=STRING;
terminal NUMBER returns number: /[0-9]+(\\.[0-9]+)?/;
terminal ID: /[A-Za-z_][\\w-]*/;
terminal STRING: /"[^"\\n]*"/;
hidden terminal WS: /\\s+/;
hidden terminal COMMENT: /#[^\\n]*/;
`;
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
