import hooks from 'eslint-plugin-react-hooks';
import tseslint from 'typescript-eslint';

const impure = [
  { selector: "CallExpression[callee.object.name='Date'][callee.property.name='now']", message: 'core has no clock: take the time as a parameter.' },
  { selector: "NewExpression[callee.name='Date'][arguments.length=0]", message: 'core has no clock: take the time as a parameter.' },
  { selector: "CallExpression[callee.object.name='Math'][callee.property.name='random']", message: 'core has no chance: take a seeded source as a parameter.' },
  { selector: "CallExpression[callee.object.name='performance']", message: 'core has no clock: take the time as a parameter.' },
];

const engravedOnly = 'Stored text is shown as text. Only the engraver draws markup, and the four files that show its drawings are listed here.';
const markup = [
  { selector: "JSXAttribute[name.name='dangerouslySetInnerHTML']", message: engravedOnly },
  { selector: "AssignmentExpression[left.property.name=/^(innerHTML|outerHTML|srcdoc)$/]", message: engravedOnly },
  { selector: "CallExpression[callee.property.name=/^(insertAdjacentHTML|createContextualFragment|setHTMLUnsafe)$/]", message: engravedOnly },
  { selector: "CallExpression[callee.name='eval']", message: 'No text is ever run.' },
  { selector: "NewExpression[callee.name='Function']", message: 'No text is ever run.' },
];

export default tseslint.config(
  { ignores: ['dist/**', 'server/store/prisma-client/**', 'coverage/**'] },
  ...tseslint.configs.recommended,
  {
    rules: {
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      '@typescript-eslint/consistent-type-imports': 'error',
      'max-lines': ['error', { max: 400 }],
      'no-console': 'off',
    },
  },
  { files: ['core/**/*.ts'], rules: { 'no-restricted-syntax': ['error', ...impure], 'no-console': 'error' } },
  {
    files: ['client/**/*.{ts,tsx}'],
    ignores: ['client/views/stand/SystemView.tsx', 'client/views/stand/paper/PaperSystem.tsx', 'client/views/section/PassageView.tsx', 'client/views/revisions/Differences.tsx'],
    rules: { 'no-restricted-syntax': ['error', ...markup] },
  },
  { files: ['client/**/*.{ts,tsx}'], plugins: { 'react-hooks': hooks }, rules: { 'react-hooks/rules-of-hooks': 'error', 'react-hooks/exhaustive-deps': 'error' } },
);
