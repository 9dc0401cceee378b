import { createRootRoute, createRoute, createRouter, Outlet } from '@tanstack/react-router';
import { BookPage } from './book/BookPage.tsx';
import { JobDesk } from './desk/JobDesk.tsx';
import { JobPage } from './desk/JobPage.tsx';
import { Lost } from './desk/Lost.tsx';
import { FileDrop } from './file/FileDrop.tsx';
import { sheetNoOf } from './frame/sheetNames.ts';
import { HistoryPage } from './history/HistoryPage.tsx';
import { SurveyPage } from './survey/SurveyPage.tsx';

const root = createRootRoute({
  component: function Page() {
    return (
      <>
        <Outlet />
        <FileDrop />
      </>
    );
  },
  notFoundComponent: Lost,
});

const book = createRoute({
  getParentRoute: () => root,
  path: '/',
  validateSearch: ({ find }: Record<string, unknown>): { find?: boolean } => (find === true ? { find } : {}),
  component: function Book() {
    return <BookPage find={book.useSearch().find === true} />;
  },
});

/** What is selected on a sheet stands in its address, so that it can be sent and comes back with the page. */
function selection({ at }: Record<string, unknown>): { at?: string } {
  return typeof at === 'string' ? { at } : {};
}

/** All pages of one job below one opening of it: going from sheet to sheet reads nothing anew. */
const job = createRoute({
  getParentRoute: () => root,
  path: '/job/$id',
  component: function OneJob() {
    return (
      <JobPage id={job.useParams().id}>
        <Outlet />
      </JobPage>
    );
  },
});

const sheets = createRoute({
  getParentRoute: () => job,
  path: '/',
  component: function Sheets() {
    return <JobDesk sheet={undefined} at={undefined} />;
  },
});

const history = createRoute({ getParentRoute: () => job, path: 'history', component: HistoryPage });

const survey = createRoute({
  getParentRoute: () => job,
  path: 'survey',
  component: function Survey() {
    return <SurveyPage address={undefined} />;
  },
});

const surveyStep = createRoute({
  getParentRoute: () => job,
  path: 'survey/$step',
  component: function SurveyStep() {
    return <SurveyPage address={surveyStep.useParams().step} />;
  },
});

const sheet = createRoute({
  getParentRoute: () => job,
  path: '$sheet',
  validateSearch: selection,
  component: function OneSheet() {
    const no = sheetNoOf(sheet.useParams().sheet);
    const { at } = sheet.useSearch();
    return no === undefined ? <Lost /> : <JobDesk sheet={no} at={at} />;
  },
});

export const router = createRouter({
  routeTree: root.addChildren([book, job.addChildren([sheets, history, survey, surveyStep, sheet])]),
  scrollRestoration: true,
});

declare module '@tanstack/react-router' {
  interface Register {
    router: typeof router;
  }
}
