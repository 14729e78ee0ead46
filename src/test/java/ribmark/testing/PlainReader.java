package ribmark.testing;

/** Reads and presses through the checked browser, which knows no scripts and checks every page it opens. */
public final class PlainReader implements Reader {

    private final Browser browser;
    private Page page;

    /** Somebody who has not opened anything yet. */
    public PlainReader(String address) {
        browser = Browser.at(address);
    }

    @Override
    public PlainReader open(String path) {
        page = browser.open(path);
        return this;
    }

    @Override
    public PlainReader type(String field, String text) {
        page.fill(field, text);
        return this;
    }

    @Override
    public PlainReader choose(String field, String value) {
        page.choose(field, value);
        return this;
    }

    @Override
    public PlainReader press(String words) {
        page = page.offers(words) ? page.press(words) : page.follow(words);
        return this;
    }

    @Override
    public String heading() {
        return page.heading().replace('\u00a0', ' ');
    }

    @Override
    public String text() {
        return page.text();
    }

    @Override
    public String at() {
        return page.path();
    }

    @Override
    public void close() {
        // nothing is held
    }
}
