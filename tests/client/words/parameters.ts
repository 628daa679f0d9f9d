import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';

const FOLDER = join(import.meta.dirname, '../../../client/words');
/** The English tables by the name their object bears in the whole. */
const FILES = { 'en.ts': ['en'], 'bowing.ts': ['hair', 'beside', 'plan'], 'piece.ts': ['piece'], 'rules.ts': ['rules'] } as const;

/** The types of the parameters of every sentence with blanks, read from the English source: "plan.limit" has "string", "string", "string". */
export function parametersByPath(): Map<string, string[]> {
  const found = new Map<string, string[]>();
  for (const [file, names] of Object.entries(FILES)) {
    const source = ts.createSourceFile(file, readFileSync(join(FOLDER, file), 'utf8'), ts.ScriptTarget.ES2022, true);
    const walk = (node: ts.Node, path: string): void => {
      if (ts.isArrowFunction(node)) found.set(path, node.parameters.filter(({ initializer }) => !initializer).map(({ type }) => type!.getText()));
      else if (ts.isAsExpression(node)) walk(node.expression, path);
      else if (ts.isObjectLiteralExpression(node)) for (const one of node.properties) if (ts.isPropertyAssignment(one)) walk(one.initializer, [path, (one.name as ts.Identifier | ts.StringLiteral).text].filter(Boolean).join('.'));
    };
    source.forEachChild((statement) => {
      if (!ts.isVariableStatement(statement)) return;
      for (const { name, initializer } of statement.declarationList.declarations) if ((names as readonly string[]).includes(name.getText())) walk(initializer!, name.getText() === 'en' ? '' : name.getText());
    });
  }
  return found;
}
