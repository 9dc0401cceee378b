import { createRootRoute, createRoute, createRouter, lazyRouteComponent, Outlet } from '@tanstack/react-router';
import { lazy, Suspense } from 'react';
import { Lost } from './desk/Lost.tsx';
import { PartMissing } from './desk/PartMissing.tsx';
import { FileDrop } from './file/FileDrop.tsx';
import { sheetNoOf } from './frame/sheetNames.ts';

// a sheet opened by its address waits for no page but its own; the others are fetched once that stands
const parts = {
  book: () => import('./book/BookPage.tsx'),
  desk: () => import('./desk/deskPages.ts'),
  history: () => import('./history/HistoryPage.tsx'),
  survey: () => import('./survey/SurveyPage.tsx'),
};
const BookPage = lazy(async () => ({ default: (await parts.book()).BookPage }));
const JobPage = lazy(async () => ({ default: (await parts.desk()).JobPage }));
const JobDesk = lazy(async () => ({ default: (await parts.desk()).JobDesk }));
const HistoryPage = lazy(async () => ({ default: (await parts.history()).HistoryPage }));
const SurveyPage = lazy(async () => ({ default: (await parts.survey()).SurveyPage }));

/** Fetches what the page of an address is drawn from. Where that fails it is said in words where it is shown. */
export async function fetchFirstPart(path: string): Promise<void> {
  await Promise.allSettled([path.startsWith('/job/') ? parts.desk() : parts.book()]);
}

/** Fetches every page there is, so that one that is open goes on when its server does not. */
export async function fetchAllParts(): Promise<void> {
  await Promise.allSettled(Object.values(parts).map((part) => part()));
}

const root = createRootRoute({
  component: function Page() {
    return (
      <>
        <Suspense fallback={null}>
          <Outlet />
        </Suspense>
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
        <Suspense fallback={null}>
          <Outlet />
        </Suspense>
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

const history = createRoute({
  getParentRoute: () => job,
  path: 'history',
  component: function History() {
    return <HistoryPage />;
  },
});

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

const specimens = createRoute({
  getParentRoute: () => root,
  path: '/specimens',
  component: lazyRouteComponent(() => import('./specimens/SpecimensPage.tsx'), 'SpecimensPage'),
});

export const router = createRouter({
  routeTree: root.addChildren([book, specimens, job.addChildren([sheets, history, survey, surveyStep, sheet])]),
  scrollRestoration: true,
  defaultErrorComponent: PartMissing,
});

declare module '@tanstack/react-router' {
  interface Register {
    router: typeof router;
  }
}
