package bolewalk.app.device

import android.content.Context
import android.content.pm.PackageManager
import bolewalk.app.R
import bolewalk.app.app
import java.io.File
import java.util.Properties
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.annotation.Config
import org.robolectric.util.ReflectionHelpers.setField

/** What leaves the phone by itself, as the framework's own parsers read it. */
@RunWith(RobolectricTestRunner::class)
class BackupTest {
    @Test fun noNetworkPermissionAndNoOtherThanKnown() {
        val asked = app.packageManager.getPackageInfo(app.packageName, PackageManager.GET_PERMISSIONS).requestedPermissions!!.toSet()
        val known = listOf("ACCESS_FINE_LOCATION", "ACCESS_COARSE_LOCATION", "CAMERA").map { "android.permission.$it" } +
            // The libraries' own guard of receivers that no other app may reach; and one that only the test library brings.
            "bolewalk.app.DYNAMIC_RECEIVER_NOT_EXPORTED_PERMISSION" + "android.permission.REORDER_TASKS"
        assertEquals(known.toSet(), asked)
    }

    @Test fun theManifestNamesTheRules() {
        val settings = Properties().apply { load(checkNotNull(BackupTest::class.java.getResourceAsStream("/com/android/tools/test_config.properties"))) }
        val manifest = File(settings.getProperty("android_merged_manifest")).readText()
        for (said in listOf("dataExtractionRules=\"@xml/data_extraction_rules\"", "fullBackupContent=\"@xml/backup_rules\"")) {
            assertTrue(said, said in manifest)
        }
    }

    @Test fun fromPhoneToPhoneTheFieldBookAndNothingElse() {
        val rules = Rules(MIGRATION)
        assertEquals(setOf(rules.folder("FILES_DIR") + "/book"), rules.included)
        assertTrue(rules.excluded.isEmpty())
    }

    @Test fun nothingGoesIntoACloud() {
        val rules = Rules(CLOUD)
        assertTrue(rules.included.isEmpty())
        for (folder in FOLDERS) assertTrue(folder, rules.folder(folder) in rules.excluded)
    }

    @Test @Config(sdk = [26]) fun whereTheSystemCannotTellThemApartNothingGoes() {
        val rules = Rules(null)
        assertTrue(rules.included.isEmpty())
        for (folder in FOLDERS) assertTrue(folder, rules.folder(folder) in rules.excluded)
    }

    /** The framework's scheme for a kind of backup: the paths that it takes and leaves. */
    private class Rules(kind: Int?) {
        private val owner = Class.forName("android.app.backup.FullBackup\$BackupScheme")
        private val scheme: Any

        init {
            // The test framework reads manifests with an older parser, which does not know both.
            if (kind != null) setField(app.applicationInfo, "dataExtractionRulesRes", R.xml.data_extraction_rules)
            setField(app.applicationInfo, "fullBackupContent", R.xml.backup_rules)
            val given = listOfNotNull(Context::class.java to app, kind?.let { Int::class.java to it })
            val maker = owner.getDeclaredConstructor(*given.map { it.first }.toTypedArray()).apply { isAccessible = true }
            scheme = maker.newInstance(*given.map { it.second }.toTypedArray())
        }

        val included = (paths("maybeParseAndGetCanonicalIncludePaths") as Map<*, *>?).orEmpty().values
            .flatMap { it as Collection<*> }.map(::pathOf).toSet()
        val excluded = (paths("maybeParseAndGetCanonicalExcludePaths") as Collection<*>?).orEmpty().map(::pathOf).toSet()

        fun folder(name: String): String = (owner.getDeclaredField(name).apply { isAccessible = true }.get(scheme) as File).canonicalPath

        private fun paths(method: String) = owner.getDeclaredMethod(method).apply { isAccessible = true }.invoke(scheme)

        private fun pathOf(rule: Any?): String = rule as? String
            ?: rule!!.javaClass.getDeclaredMethod("getPath").apply { isAccessible = true }.invoke(rule) as String
    }

    private companion object {
        val FOLDERS = listOf("FILES_DIR", "DATABASE_DIR", "SHAREDPREF_DIR", "ROOT_DIR")

        // As the framework numbers where a backup goes.
        const val CLOUD = 0
        const val MIGRATION = 1
    }
}
