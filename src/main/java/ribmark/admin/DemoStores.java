package ribmark.admin;

import java.time.ZoneId;
import ribmark.blocksheet.BlockSheetStore;
import ribmark.blocksheet.RanLineStore;
import ribmark.carcase.CarcaseStore;
import ribmark.curriculum.Curriculum;
import ribmark.database.Database;
import ribmark.export.ExportStore;
import ribmark.export.Reports;
import ribmark.feedback.ReplyStore;
import ribmark.people.GroupStore;
import ribmark.people.Passwords;
import ribmark.people.PeopleStore;
import ribmark.scales.ScaleCheckStore;
import ribmark.signing.SignOffStore;
import ribmark.signing.Standings;
import ribmark.study.Practising;
import ribmark.study.StudyStore;
import ribmark.weighing.Answering;
import ribmark.weighing.CuttingTests;
import ribmark.weighing.WeighUpStore;

/** Everything of the program that the demo fills, the same that its pages write to. */
public record DemoStores(
        Database database,
        PeopleStore people,
        Passwords passwords,
        GroupStore groups,
        CarcaseStore carcases,
        BlockSheetStore sheets,
        RanLineStore ranLines,
        WeighUpStore weights,
        Answering questions,
        CuttingTests cuttingTests,
        ScaleCheckStore scaleChecks,
        SignOffStore signOffs,
        ReplyStore replies,
        Standings standings,
        Reports reports,
        ExportStore exports,
        StudyStore studied,
        Practising practising,
        Curriculum curriculum,
        ZoneId zone) {}
