package ribmark;

import ribmark.bonemap.BonePictures;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.CutPages;
import ribmark.curriculum.StagePages;
import ribmark.curriculum.StepPages;
import ribmark.curriculum.WordPages;
import ribmark.moved.MovedPages;
import ribmark.study.PracticePages;
import ribmark.study.QuestionPages;
import ribmark.study.StudyPages;
import ribmark.web.Routes;

/** The pages of everything that is read and practised, wired by hand. */
final class AtTheBook {

    private final Stores stores;
    private final BonePictures pictures;

    AtTheBook(Stores stores, BonePictures pictures) {
        this.stores = stores;
        this.pictures = pictures;
    }

    void addTo(Routes routes) {
        Curriculum curriculum = stores.content.curriculum();
        new StepPages(curriculum, pictures).addTo(routes);
        new MovedPages(curriculum, pictures::ran).addTo(routes);
        new StagePages(curriculum, pictures).addTo(routes);
        new CutPages(curriculum).addTo(routes);
        new WordPages(curriculum).addTo(routes);
        new StudyPages(curriculum, stores.practising).addTo(routes);
        new PracticePages(stores.practising, stores.studied, pictures::shown).addTo(routes);
        new QuestionPages(stores.practising, stores.studied, stores.groups, curriculum).addTo(routes);
    }
}
