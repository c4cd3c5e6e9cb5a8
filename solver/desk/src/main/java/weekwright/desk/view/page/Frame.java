package weekwright.desk.view.page;

/**
 * What is round every page.
 *
 * @param style address of the style sheet
 * @param times address of the style sheet for places on the axis of time
 * @param htmx address of the library that swaps parts of a page
 * @param script address of the page's own script
 * @param pages address of the style sheet of all pages but the week
 * @param forms address of the script of forms
 * @param icon address of the page's picture in a browser's tab
 */
public record Frame(String style, String times, String htmx, String script, String pages, String forms, String icon) {
    /** Settings of the library: nothing is evaluated, nothing is asked of elsewhere, refusals are shown too. */
    public static final String HTMX_SETTINGS = "{\"allowEval\":false,\"includeIndicatorStyles\":false,"
            + "\"allowScriptTags\":false,\"selfRequestsOnly\":true,\"historyCacheSize\":0,\"scrollIntoViewOnBoost\":false,"
            + "\"responseHandling\":[{\"code\":\"204\",\"swap\":false},{\"code\":\"[23]..\",\"swap\":true},"
            + "{\"code\":\"[45]..\",\"swap\":true,\"error\":false,\"target\":\"#notice\",\"swapOverride\":\"innerHTML\"}]}";

    /** The settings, for templates. */
    public String settings() {
        return HTMX_SETTINGS;
    }
}
