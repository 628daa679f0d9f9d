import hooks from 'eslint-plugin-react-hooks';
import tseslint from 'typescript-eslint';

const impure = [
  { selector: "CallExpression[callee.object.name='Date'][callee.property.name='now']", message: 'core has no clock: take the time as a parameter.' },
  { selector: "NewExpression[callee.name='Date'][arguments.length=0]", message: 'core has no clock: take the time as a parameter.' },
  { selector: "CallExpression[callee.object.name='Math'][callee.property.name='random']", message: 'core has no chance: take a seeded source as a parameter.' },
  { selector: "CallExpression[callee.object.name='performance']", message: 'core has no clock: take the time as a parameter.' },
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
  { files: ['client/**/*.{ts,tsx}'], plugins: { 'react-hooks': hooks }, rules: { 'react-hooks/rules-of-hooks': 'error', 'react-hooks/exhaustive-deps': 'error' } },
);
