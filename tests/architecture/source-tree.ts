/** The files of src with what they import, read once for all architecture tests. */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

export const projectRoot = fileURLToPath(new URL('../..', import.meta.url));
export const sourceRoot = join(projectRoot, 'src');

/** One import or re-export. */
export interface SourceImport {
  readonly specifier: string;
  /** File of src it leads to, relative to src; absent for a package. */
  readonly file?: string;
  /** Name of the package, without a path inside it; `node` for the modules of Node. */
  readonly package?: string;
  /** True when nothing of it is left after compiling. */
  readonly typeOnly: boolean;
}

export interface SourceFile {
  /** Path relative to src, with forward slashes. */
  readonly name: string;
  /** First folder, or `door` for the files directly in src. */
  readonly folder: string;
  readonly text: string;
  readonly tree: ts.SourceFile;
  readonly imports: readonly SourceImport[];
}

/** Files below a folder of the project by name relative to it, sorted. */
export function filesBelow(folder: string, ending: string): readonly string[] {
  return readdirSync(join(projectRoot, folder), { recursive: true, encoding: 'utf8' })
    .map((name) => name.replaceAll('\\', '/'))
    .filter((name) => name.endsWith(ending))
    .sort();
}

export const sourceFiles: readonly SourceFile[] = filesBelow('src', '.ts').map((name) => {
  const text = readFileSync(join(sourceRoot, name), 'utf8');
  const tree = ts.createSourceFile(name, text, ts.ScriptTarget.Latest, true);
  return {
    name,
    folder: name.includes('/') ? (name.split('/')[0] ?? '') : 'door',
    text,
    tree,
    imports: importsOf(name, tree),
  };
});

/** Calls a function for every node of a file. */
export function walk(node: ts.Node, visit: (node: ts.Node) => void): void {
  visit(node);
  node.forEachChild((child) => walk(child, visit));
}

/** Line of a node, counted from 1. */
export function lineOf(node: ts.Node): number {
  const file = node.getSourceFile();
  return file.getLineAndCharacterOfPosition(node.getStart(file)).line + 1;
}

function importsOf(name: string, tree: ts.SourceFile): readonly SourceImport[] {
  const found: SourceImport[] = [];
  walk(tree, (node) => {
    const [specifier, typeOnly] = importedBy(node);
    if (specifier === undefined || !ts.isStringLiteral(specifier)) return;
    found.push({ ...target(name, specifier.text), typeOnly });
  });
  return found;
}

function importedBy(node: ts.Node): readonly [ts.Node | undefined, boolean] {
  if (ts.isImportDeclaration(node)) return [node.moduleSpecifier, isTypeOnlyClause(node.importClause)];
  if (ts.isExportDeclaration(node)) return [node.moduleSpecifier, isTypeOnlyExport(node)];
  if (ts.isImportTypeNode(node))
    return [ts.isLiteralTypeNode(node.argument) ? node.argument.literal : undefined, true];
  if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword)
    return [node.arguments[0], false];
  return [undefined, false];
}

function isTypeOnlyClause(clause: ts.ImportClause | undefined): boolean {
  if (clause === undefined) return false;
  if (clause.isTypeOnly) return true;
  const bindings = clause.namedBindings;
  if (clause.name !== undefined || bindings === undefined || !ts.isNamedImports(bindings)) return false;
  return bindings.elements.length > 0 && bindings.elements.every((element) => element.isTypeOnly);
}

function isTypeOnlyExport({ isTypeOnly, exportClause }: ts.ExportDeclaration): boolean {
  if (isTypeOnly) return true;
  if (exportClause === undefined || !ts.isNamedExports(exportClause)) return false;
  return exportClause.elements.length > 0 && exportClause.elements.every((element) => element.isTypeOnly);
}

function target(name: string, specifier: string): Omit<SourceImport, 'typeOnly'> {
  if (specifier.startsWith('.')) {
    const path = relative(sourceRoot, resolve(sourceRoot, dirname(name), specifier));
    return { specifier, file: path.replaceAll('\\', '/').replace(/\.js$/, '.ts') };
  }
  if (specifier.startsWith('node:')) return { specifier, package: 'node' };
  const parts = specifier.split('/');
  return { specifier, package: parts.slice(0, specifier.startsWith('@') ? 2 : 1).join('/') };
}
