plugins {
    alias(libs.plugins.android.application)
    alias(libs.plugins.kotlin.android)
    alias(libs.plugins.kotlin.compose)
}

// Written by tests/bindings/generate: kotlin/ and, for the tests, lib/ with the host's library.
val bindings = System.getenv("BOLEWALK_BINDINGS") ?: rootProject.file("../target/bindings").path

android {
    namespace = "bolewalk.app"
    compileSdk = libs.versions.compileSdk.get().toInt()
    defaultConfig {
        applicationId = "bolewalk.app"
        minSdk = libs.versions.minSdk.get().toInt()
        targetSdk = libs.versions.targetSdk.get().toInt()
        versionCode = 1
        versionName = "0.1"
    }
    buildTypes {
        release {
            isMinifyEnabled = true
            isShrinkResources = true
            proguardFiles(getDefaultProguardFile("proguard-android-optimize.txt"), "proguard-rules.pro")
        }
    }
    compileOptions {
        sourceCompatibility = JavaVersion.VERSION_17
        targetCompatibility = JavaVersion.VERSION_17
    }
    buildFeatures { compose = true }
    testOptions {
        unitTests {
            isIncludeAndroidResources = true
            all {
                it.jvmArgs("--add-opens=java.base/java.io=ALL-UNNAMED")
                it.systemProperty("jna.library.path", "$bindings/lib")
                it.systemProperty("bolewalk.root", rootProject.file("..").path)
                it.systemProperty("bolewalk.pictures", layout.buildDirectory.dir("pictures").get().asFile.path)
                it.workingDir = layout.buildDirectory.dir("running").get().asFile.apply { mkdirs() }
                it.systemProperty("robolectric.graphicsMode", "NATIVE")
                it.systemProperty("robolectric.pixelCopyRenderMode", "hardware")
            }
        }
    }
    sourceSets["main"].kotlin.srcDir("$bindings/kotlin")
    // Written by mobile-android/phone: the core for ARM and x86 phones.
    sourceSets["main"].jniLibs.srcDir("$bindings/phone")
}

kotlin {
    compilerOptions {
        jvmTarget.set(org.jetbrains.kotlin.gradle.dsl.JvmTarget.JVM_17)
        allWarningsAsErrors.set(false) // the generated bindings warn; tools/build.py compiles them apart
    }
}

// One line a library, so that tools/resolve.py can read them too.
dependencies {
    implementation(platform(libs.compose.bom))
    implementation(libs.compose.ui)
    implementation(libs.compose.foundation)
    implementation(libs.compose.material3)
    implementation(libs.activity.compose)
    implementation(libs.lifecycle.viewmodel.compose)
    implementation(libs.lifecycle.runtime.compose)
    implementation(libs.core.ktx)
    implementation(libs.coroutines.android)
    implementation(variantOf(libs.jna) { artifactType("aar") })

    testImplementation(platform(libs.compose.bom))
    testImplementation(libs.jna) // the jar, with the host's natives
    testImplementation(libs.junit)
    testImplementation(libs.robolectric)
    testImplementation(libs.androidx.test.core)
    testImplementation(libs.androidx.test.ext)
    testImplementation(libs.compose.test.junit4)
    testImplementation(libs.tomlj)
    debugImplementation(libs.compose.test.manifest)
}
